package lungfish.print;

import java.util.ArrayList;
import java.util.List;

/**
 * Text that wraps, not over more than so many lines. Its first capitals touch the top; the block ends at its last base line.
 */
record Text(String text, Lettering lettering, int mostLines) implements Block {
    @Override
    public Laid at(double x, double y, double widthPt) {
        List<String> lines = text.isEmpty() ? List.of() : lettering.lines(text, widthPt, mostLines);
        List<Mark> marks = new ArrayList<>();
        double baseline = y + lettering.capitalsPt();
        for (String line : lines) {
            marks.add(new Mark.Words(line, lettering, x, baseline, false));
            baseline += lettering.linePt();
        }
        return new Laid(lines.isEmpty() ? 0 : baseline - lettering.linePt() - y, marks);
    }
}
