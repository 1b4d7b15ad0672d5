package lungfish.print;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import lungfish.drawing.Wrapped;

/**
 * How a text is set: weight and size. Measures it the same for picture, PDF and printer.
 *
 * @param sizePt of the type, in points
 */
record Lettering(Weight weight, double sizePt) {
    /** Height of capitals, of the size: 1490 of 2048 units, table OS/2 of the font files. */
    static final double CAPITALS = 1490.0 / 2048;

    private static final double LINE = 1.22;
    private static final FontRenderContext ON_PAPER = new FontRenderContext(null, true, true);
    private static final String MORE = "…";
    private static final char NO_BREAK = '\u00A0';

    static Lettering regular(double sizePt) {
        return new Lettering(Weight.REGULAR, sizePt);
    }

    static Lettering bold(double sizePt) {
        return new Lettering(Weight.SEMI_BOLD, sizePt);
    }

    Font font(String text) {
        return weight.font(text, sizePt);
    }

    double width(String text) {
        return font(text).getStringBounds(text, ON_PAPER).getWidth();
    }

    /** What ink covers where the text begins at 0, 0 on its base line. */
    Rectangle2D ink(String text) {
        return font(text).createGlyphVector(ON_PAPER, text).getVisualBounds();
    }

    double capitalsPt() {
        return CAPITALS * sizePt;
    }

    double linePt() {
        return LINE * sizePt;
    }

    /** The lines of a width, not more than so many; where words are left out, the line says so. */
    List<String> lines(String text, double widthPt, int most) {
        List<String> all = Wrapped.lines(bound(text), font(text), widthPt);
        List<String> shown = all.size() <= most
                ? all
                : Stream.concat(
                                all.stream().limit(most - 1L),
                                Stream.of(String.join(" ", all.subList(most - 1, all.size()))))
                        .toList();
        return shown.stream()
                .map(line -> fitting(line.replace(NO_BREAK, ' '), widthPt))
                .toList();
    }

    /** A short number stays with the word before it, as in "shelf 3" and "1 h 50 min". */
    private static String bound(String text) {
        return text.replaceAll("(?<=\\p{L}) (?=\\d{1,2}\\b)", String.valueOf(NO_BREAK));
    }

    /** The text, or as much of it as fits, with a mark for what is missing. */
    String fitting(String text, double widthPt) {
        if (width(text) <= widthPt) {
            return text;
        }
        int end = text.length() - 1;
        while (end > 0 && width(text.substring(0, end).stripTrailing() + MORE) > widthPt) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + MORE;
    }
}
