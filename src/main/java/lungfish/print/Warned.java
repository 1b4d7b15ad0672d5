package lungfish.print;

import java.util.ArrayList;
import java.util.List;

/** A block beside a thick line: what can hurt someone is seen without colour. */
record Warned(Block inside) implements Block {
    private static final double LINE_PT = 2.5;
    private static final double GAP_PT = 7;

    @Override
    public Laid at(double x, double y, double widthPt) {
        Laid laid = inside.at(x + GAP_PT, y, widthPt - GAP_PT);
        List<Mark> marks = new ArrayList<>(laid.marks());
        marks.add(new Mark.Rule(x + LINE_PT / 2, y - 2, x + LINE_PT / 2, y + laid.heightPt() + 3, LINE_PT));
        return new Laid(laid.heightPt(), marks);
    }
}
