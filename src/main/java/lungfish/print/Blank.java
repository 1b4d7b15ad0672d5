package lungfish.print;

import java.util.List;

/** A line to write on by hand, with its label. */
record Blank(String label, Lettering lettering, double heightPt) implements Block {
    private static final double GAP_PT = 6;
    private static final double LINE_PT = 0.6;

    @Override
    public Laid at(double x, double y, double widthPt) {
        double bottom = y + heightPt - LINE_PT;
        double begin = x + (label.isEmpty() ? 0 : lettering.width(label) + GAP_PT);
        Mark line = new Mark.Rule(begin, bottom, x + widthPt, bottom, LINE_PT);
        return new Laid(
                heightPt,
                label.isEmpty() ? List.of(line) : List.of(new Mark.Words(label, lettering, x, bottom, false), line));
    }
}
