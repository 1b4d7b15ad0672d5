package lungfish.drawing;

import java.util.List;
import lungfish.quantity.DisplayUnits;

/**
 * A scale in which one measures on paper with a rule of the reader's units: metric the round ones (1 : 10 to 1 : 200 as in
 * ISO 5455, with the 25 and 75 between them), in US units so many parts of an inch to a foot.
 *
 * @param to how many times larger the room is than its picture
 */
record PaperScale(double to, String words) {
    private static final double PT_PER_M = 72 / 0.0254; // a point is 1/72 inch
    private static final List<PaperScale> METRIC =
            List.of(one(10), one(20), one(25), one(50), one(75), one(100), one(150), one(200), one(500));
    private static final List<PaperScale> US = List.of(
            inch(12, "1 in"),
            inch(16, "3/4 in"),
            inch(24, "1/2 in"),
            inch(32, "3/8 in"),
            inch(48, "1/4 in"),
            inch(64, "3/16 in"),
            inch(96, "1/8 in"),
            inch(128, "3/32 in"),
            inch(192, "1/16 in"),
            inch(384, "1/32 in"));

    private static PaperScale one(int to) {
        return new PaperScale(to, "1 : " + to);
    }

    private static PaperScale inch(int to, String words) {
        return new PaperScale(to, words + " = 1 ft");
    }

    /** The largest in which so much of the room takes no more than so much of the page; the smallest where none does. */
    static PaperScale of(DisplayUnits units, double wideM, double highM, double widePt, double highPt) {
        List<PaperScale> all = units == DisplayUnits.METRIC ? METRIC : US;
        return all.stream()
                .filter(each -> each.ptPerM() * wideM <= widePt && each.ptPerM() * highM <= highPt)
                .findFirst()
                .orElse(all.get(all.size() - 1));
    }

    double ptPerM() {
        return PT_PER_M / to;
    }
}
