package lungfish.drawing;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the figures of a list of blowers stand: as wide as the widest of each, so that they line up from row to row; none
 * where there is no room for all of them side by side.
 *
 * @param endsPx right edge of each column, from the left edge of the text; empty: no columns
 * @param isSmall whether they are in the smaller type, for want of room
 */
public record BenchColumns(List<Double> endsPx, boolean isSmall) {
    public static final BenchColumns NONE = new BenchColumns(List.of(), false);

    private static final double GAP_PX = 7;

    private static final FontRenderContext ON_SCREEN = new FontRenderContext(null, true, true);

    public BenchColumns {
        endsPx = List.copyOf(endsPx);
    }

    /**
     * Columns for lines and the headings over them, in so much room.
     *
     * @param heads the words over each column
     */
    public static BenchColumns of(List<List<String>> heads, List<BenchLine> lines, double roomPx, Look look) {
        return fitting(heads, lines, false, roomPx, look)
                .or(() -> fitting(heads, lines, true, roomPx, look))
                .orElse(NONE);
    }

    private static Optional<BenchColumns> fitting(
            List<List<String>> heads, List<BenchLine> lines, boolean isSmall, double roomPx, Look look) {
        Font font = new BenchColumns(List.of(), isSmall).font(look);
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            widths.add(Math.max(widest(heads.get(i), look.type().drawing()), widest(column(lines, i), font)));
        }
        double all = widths.stream().mapToDouble(Double::doubleValue).sum();
        double gap = (roomPx - all) / Math.max(1, widths.size() - 1);
        return gap < look.px(GAP_PX) ? Optional.empty() : Optional.of(new BenchColumns(ends(widths, gap), isSmall));
    }

    private static List<String> column(List<BenchLine> lines, int i) {
        return lines.stream().map(line -> line.figures().get(i)).toList();
    }

    private static double widest(List<String> texts, Font font) {
        return texts.stream().mapToDouble(text -> width(text, font)).max().orElse(0);
    }

    /** In which the figures are. */
    Font font(Look look) {
        return isSmall ? look.type().drawingName() : look.type().label();
    }

    private static List<Double> ends(List<Double> widths, double gap) {
        List<Double> ends = new ArrayList<>();
        double x = -gap;
        for (double width : widths) {
            x += gap + width;
            ends.add(x);
        }
        return ends;
    }

    static double width(String text, Font font) {
        return font.getStringBounds(text, ON_SCREEN).getWidth();
    }

    /** Whether the figures have to be told in words, for want of room. */
    public boolean isEmpty() {
        return endsPx.isEmpty();
    }
}
