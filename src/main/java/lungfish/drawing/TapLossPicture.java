package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * The taps of a room on one line: how much pressure the pipe takes on the way from the blower to each. The blower stands at
 * the left end; the farther right a dot, the less reaches that tap. Pictures with one end of the axis can be compared.
 */
public final class TapLossPicture {
    private static final double HIGH_PX = 16;
    private static final double DOT_PX = 2.1;
    private static final double WORST_PX = 3.6;
    private static final double MARGIN_PX = 4.6;

    private TapLossPicture() {}

    /** How high it likes to be, pixels. */
    public static double height(Look look) {
        return look.px(HIGH_PX);
    }

    /**
     * Fills the area.
     *
     * @param lossesPa one for each tap, the least first, one or more
     * @param mostPa at the right end of the axis, above 0
     */
    public static void paint(List<Double> lossesPa, double mostPa, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        double left = area.getX() + ink.px(MARGIN_PX);
        double perPa = (area.getWidth() - 2 * ink.px(MARGIN_PX)) / mostPa;
        double y = area.getCenterY();
        ink.line(left, y, left + perPa * mostPa, y, ink.palette().line(), 1);
        ink.line(left, y - ink.px(5), left, y + ink.px(5), ink.palette().softInk(), 1.4);
        double best = left + perPa * lossesPa.get(0);
        double worst = left + perPa * lossesPa.get(lossesPa.size() - 1);
        ink.draw(
                new Line2D.Double(best, y, worst, y),
                ink.palette().air(),
                new BasicStroke((float) ink.px(1.6), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        lossesPa.forEach(loss -> ink.fill(
                circle(left + perPa * loss, y, ink.px(DOT_PX)), ink.palette().air()));
        ink.fill(circle(worst, y, ink.px(WORST_PX)), ink.palette().sheet());
        ink.draw(circle(worst, y, ink.px(WORST_PX - 0.6)), ink.palette().ink(), 1.4);
    }

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }
}
