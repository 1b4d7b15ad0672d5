package lungfish.print;

import java.util.ArrayList;
import java.util.List;

/** Text that hangs beside a sign. */
record Item(String sign, String text, Lettering bold, Lettering lettering, int mostLines) implements Block {
    private static final double INDENT = 1.3; // of the size

    @Override
    public Laid at(double x, double y, double widthPt) {
        double indent = INDENT * lettering.sizePt();
        Laid beside = new Text(text, lettering, mostLines).at(x + indent, y, widthPt - indent);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Words(sign, bold, x, y + lettering.capitalsPt(), false));
        marks.addAll(beside.marks());
        return new Laid(beside.heightPt(), marks);
    }
}
