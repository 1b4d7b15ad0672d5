package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The headline in white on black, and at its right what it is of, in not more than two lines. */
record TitleBand(String headline, String of, Lettering large, Lettering name) implements Block {
    private static final double PADDING_PT = 12;
    private static final int MOST_LINES = 2;

    @Override
    public Laid at(double x, double y, double widthPt) {
        double headlinePt = large.width(headline);
        double namePt = widthPt - headlinePt - 4 * PADDING_PT;
        List<String> lines = name.lines(of, namePt, MOST_LINES);
        double namesHigh = name.capitalsPt() + (lines.size() - 1) * name.linePt();
        double high = Math.max(large.capitalsPt(), namesHigh) + 2 * PADDING_PT;
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Filled(new Rectangle2D.Double(x, y, widthPt, high)));
        double middle = y + high / 2;
        marks.add(new Mark.Words(headline, large, x + PADDING_PT, middle + large.capitalsPt() / 2, true));
        double baseline = middle - namesHigh / 2 + name.capitalsPt();
        for (String line : lines) {
            double right = x + widthPt - PADDING_PT;
            marks.add(new Mark.Words(line, name, right - name.width(line), baseline, true));
            baseline += name.linePt();
        }
        return new Laid(high, marks);
    }
}
