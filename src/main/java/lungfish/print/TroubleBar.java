package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.report.DrillCard;

/**
 * The time of one tank without air, from left to right: white while all is well, hatched from the alarm, closer from the
 * danger of the cautious figure, black from that of the likely one.
 */
record TroubleBar(DrillCard.TankRow tank, Lettering small) implements Block {
    private static final double BAR_PT = 11;
    private static final double FRAME_PT = 0.8;
    private static final double GAP_PT = 4;
    private static final double WIDE_HATCH_PT = 7;
    private static final double CLOSE_HATCH_PT = 3;
    private static final double BEYOND = 1.12; // the line goes on a little after the last moment
    private static final double FURTHEST = 6; // cautious dangers; what is later lies beyond the end

    @Override
    public Laid at(double x, double y, double widthPt) {
        double endS = endS();
        double label = small.capitalsPt() + GAP_PT;
        double top = y + (hasAlarm() ? label : 0);
        Scale scale = new Scale(x, widthPt, endS, top);
        List<Mark> marks = new ArrayList<>();
        marks.addAll(scale.hatched(tank.alarm().s(), tank.danger().s(), WIDE_HATCH_PT));
        marks.addAll(scale.hatched(tank.danger().s(), tank.likely().s(), CLOSE_HATCH_PT));
        marks.addAll(scale.black(tank.likely().s()));
        marks.add(new Mark.Framed(new Rectangle2D.Double(x, top, widthPt, BAR_PT), FRAME_PT));
        labels(scale, y + small.capitalsPt(), top + BAR_PT + GAP_PT + small.capitalsPt(), marks);
        return new Laid(top - y + BAR_PT + label, marks);
    }

    private double endS() {
        double cautious = Double.isFinite(tank.danger().s())
                ? tank.danger().s()
                : tank.alarm().s();
        double last = Double.isFinite(tank.likely().s()) ? tank.likely().s() : cautious;
        return BEYOND * Math.min(last, FURTHEST * cautious);
    }

    /** The alarm above the bar, the two dangers below it; what is the same moment is said once. */
    private void labels(Scale scale, double above, double below, List<Mark> marks) {
        String danger = "danger " + tank.danger().said();
        String likely = "likely " + tank.likely().said() + (isBeyond() ? " →" : "");
        if (hasAlarm()) {
            marks.add(label("alarm " + tank.alarm().said(), scale, tank.alarm(), above));
        }
        boolean isSame = tank.danger().said().equals(tank.likely().said());
        double dangerEnd = scale.labelX(tank.danger().s(), small.width(danger)) + small.width(danger);
        if (isSame || scale.labelX(tank.likely().s(), small.width(likely)) < dangerEnd + 2 * GAP_PT) {
            marks.add(label(isSame ? danger : danger + ", " + likely, scale, tank.danger(), below));
        } else {
            marks.add(label(danger, scale, tank.danger(), below));
            marks.add(label(likely, scale, tank.likely(), below));
        }
    }

    private boolean hasAlarm() {
        return !tank.alarm().said().equals(tank.danger().said());
    }

    private boolean isBeyond() {
        return tank.likely().s() > endS();
    }

    private Mark label(String text, Scale scale, DrillCard.Moment moment, double baseline) {
        return new Mark.Words(text, small, scale.labelX(moment.s(), small.width(text)), baseline, false);
    }

    /** From seconds to places. */
    private record Scale(double x, double widthPt, double endS, double top) {
        double at(double s) {
            return x + widthPt * Math.min(1, s / endS);
        }

        /** Of a label that stands around its moment, as far as the bar goes. */
        double labelX(double s, double wide) {
            return Math.min(Math.max(x, at(s) - wide / 2), x + widthPt - wide);
        }

        List<Mark> hatched(double fromS, double toS, double everyPt) {
            double from = at(fromS);
            double to = at(toS);
            Rectangle2D area = new Rectangle2D.Double(from, top, to - from, BAR_PT);
            Mark edge = new Mark.Rule(from, top, from, top + BAR_PT, FRAME_PT);
            return to > from ? List.of(new Mark.Hatched(area, everyPt), edge) : List.of();
        }

        List<Mark> black(double fromS) {
            double from = at(fromS);
            return from < x + widthPt
                    ? List.of(new Mark.Filled(new Rectangle2D.Double(from, top, x + widthPt - from, BAR_PT)))
                    : List.of();
        }
    }
}
