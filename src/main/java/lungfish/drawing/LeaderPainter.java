package lungfish.drawing;

import java.awt.Font;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Leads from a mark to a label on free ground: a bent line, as on a drawing. */
final class LeaderPainter {
    private static final double NEAREST_PX = 26;
    private static final double FARTHEST_PX = 190;
    private static final double STEP_PX = 12;
    private static final double SHELF_PX = 14;
    private static final int SAMPLES = 8;

    private final Ink ink;
    private final LabelSpots spots;

    LeaderPainter(Ink ink, LabelSpots spots) {
        this.ink = ink;
        this.spots = spots;
    }

    /** Where the line bends, which way its shelf goes, and the label at its end. */
    private record Lead(double bendX, double bendY, int way, Rectangle2D label) {}

    void paint(double x, double y, double radius, String text) {
        Font font = ink.type().drawingName();
        Lead lead = best(x, y, ink.width(text, font), ink.height(font));
        spots.take(lead.label(), 3);
        Rectangle2D label = lead.label();
        double angle = Math.atan2(lead.bendY() - y, lead.bendX() - x);
        Path2D line = new Path2D.Double();
        line.moveTo(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
        line.lineTo(lead.bendX(), lead.bendY());
        line.lineTo(lead.bendX() + lead.way() * ink.px(SHELF_PX - 4), lead.bendY());
        ink.fill(Marks.outset(label, ink.px(1)), ink.palette().sheet());
        ink.draw(line, ink.palette().accent(), 1.2);
        ink.text(
                text,
                label.getX(),
                label.getMaxY() - ink.height(font) * 0.27,
                font,
                ink.palette().accent());
    }

    private Lead best(double x, double y, double wide, double high) {
        Lead best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double reach = NEAREST_PX; reach <= FARTHEST_PX; reach += STEP_PX) {
            for (int degrees = 30; degrees < 360; degrees += 30) {
                Lead lead = lead(x, y, ink.px(reach), Math.toRadians(degrees), wide, high);
                double cost = 20 * cost(lead) + crossed(x, y, lead) + ink.px(reach);
                if (degrees % 180 != 0 && cost < least) {
                    best = lead;
                    least = cost;
                }
            }
        }
        return best == null ? lead(x, y, ink.px(NEAREST_PX), 1, wide, high) : best;
    }

    private double cost(Lead lead) {
        return spots.cost(Marks.outset(lead.label(), ink.px(3)));
    }

    /** What the line runs over: a little matters, a name more than a rack. */
    private double crossed(double x, double y, Lead lead) {
        double sum = 0;
        for (int i = 1; i <= SAMPLES; i++) {
            double share = (double) i / SAMPLES;
            double atX = x + share * (lead.bendX() - x);
            double atY = y + share * (lead.bendY() - y);
            sum += 0.5 * spots.cost(TakenGround.around(atX, atY, ink.px(2)));
        }
        return sum;
    }

    private Lead lead(double x, double y, double reach, double angle, double wide, double high) {
        double bendX = x + reach * Math.cos(angle);
        double bendY = y + reach * Math.sin(angle);
        int way = Math.cos(angle) >= -1e-9 ? 1 : -1;
        double start = bendX + way * ink.px(SHELF_PX);
        double left = way > 0 ? start : start - wide;
        return new Lead(bendX, bendY, way, new Rectangle2D.Double(left, bendY - high / 2, wide, high));
    }
}
