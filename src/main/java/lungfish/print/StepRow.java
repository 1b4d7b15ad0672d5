package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.report.DrillCard;

/** A numbered step with a box to tick: what to do in large letters, and beside it which, where and who. *
 * @param last number on the card
 */
record StepRow(int number, int last, DrillCard.Step step, Lettering large, Lettering small, int mostDetail)
        implements Block {
    private static final int MOST_ACTION = 2;
    private static final double ACTION_SHARE = 0.62; // of the width beside box and number
    private static final double GAP_PT = 8;
    private static final double BOX_LINE_PT = 1.4;

    @Override
    public Laid at(double x, double y, double widthPt) {
        double box = large.capitalsPt();
        double numberEnd = box + GAP_PT + large.width(String.valueOf(last));
        double begin = numberEnd + GAP_PT;
        double actionPt = step.detail().isEmpty() ? widthPt - begin : (widthPt - begin - GAP_PT) * ACTION_SHARE;
        Laid said = new Text(step.action(), large, MOST_ACTION).at(x + begin, y, actionPt);
        List<Mark> marks = new ArrayList<>();
        String figure = String.valueOf(number);
        marks.add(new Mark.Framed(new Rectangle2D.Double(x, y, box, box), BOX_LINE_PT));
        marks.add(new Mark.Words(figure, large, x + numberEnd - large.width(figure), y + box, false));
        marks.addAll(said.marks());
        Laid more = detail(x + begin + actionPt + GAP_PT, y, widthPt - begin - actionPt - GAP_PT, said.heightPt());
        marks.addAll(more.marks());
        return new Laid(Math.max(said.heightPt(), more.heightPt()), marks);
    }

    /** In the middle beside the action, or level with its top where there is more of it. */
    private Laid detail(double x, double y, double widthPt, double besidePt) {
        Text text = new Text(step.detail(), small, mostDetail);
        double spare = besidePt - text.at(x, y, widthPt).heightPt();
        return text.at(x, y + Math.max(0, spare / 2), widthPt);
    }
}
