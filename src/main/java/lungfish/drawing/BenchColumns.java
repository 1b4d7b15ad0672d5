package lungfish.drawing;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the figures of a list of blowers stand: as wide as the widest of each, so that they line up from row to row; none
 * where there is no room for all of them side by side.
 *
 * @param endsPx right edge of each column, from the left edge of the text; empty: no columns
 */
public record BenchColumns(List<Double> endsPx) {
    private static final double GAP_PX = 10;

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
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            double widest = 0;
            for (String head : heads.get(i)) {
                widest = Math.max(widest, width(head, look.type().drawing()));
            }
            for (BenchLine line : lines) {
                widest = Math.max(
                        widest, width(line.figures().get(i), look.type().label()));
            }
            widths.add(widest);
        }
        double all = widths.stream().mapToDouble(Double::doubleValue).sum();
        double gap = (roomPx - all) / Math.max(1, widths.size() - 1);
        return new BenchColumns(gap < look.px(GAP_PX) ? List.of() : ends(widths, gap));
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
