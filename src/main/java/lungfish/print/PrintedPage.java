package lungfish.print;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;

/** One page: a sheet and the marks on it. */
public record PrintedPage(Paper paper, List<Mark> marks) {
    public PrintedPage {
        marks = List.copyOf(marks);
    }

    /** Paints it where a unit is a point and the upper left corner of the sheet is at 0, 0. */
    public void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        marks.forEach(mark -> mark.paint(g));
    }
}
