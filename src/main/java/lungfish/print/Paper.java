package lungfish.print;

import java.awt.geom.Rectangle2D;
import lungfish.quantity.DisplayUnits;

/** What lies in the printer, upright. Sizes: ISO 216 (A4, 210 mm by 297 mm) and ANSI Y14.1 (A, 8.5 in by 11 in). */
public enum Paper {
    A4(210 / Paper.MM_PER_PT, 297 / Paper.MM_PER_PT),
    US_LETTER(8.5 * 72, 11 * 72);

    private static final double MM_PER_PT = 25.4 / 72; // a point is 1/72 inch
    /** 12 mm: more than desk printers leave white, and room for pins and a sleeve. */
    private static final double MARGIN_PT = 34;

    private final double widthPt;
    private final double heightPt;

    Paper(double widthPt, double heightPt) {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    /** The usual one where these units are. */
    public static Paper of(DisplayUnits units) {
        return switch (units) {
            case METRIC -> A4;
            case US -> US_LETTER;
        };
    }

    public double widthPt() {
        return widthPt;
    }

    public double heightPt() {
        return heightPt;
    }

    /** What is printed on: the sheet without its margins, from its upper left corner, in points. */
    public Rectangle2D inside() {
        return new Rectangle2D.Double(MARGIN_PT, MARGIN_PT, widthPt - 2 * MARGIN_PT, heightPt - 2 * MARGIN_PT);
    }
}
