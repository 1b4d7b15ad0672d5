package lungfish.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.quantity.Dimension;

/**
 * The time line of an outage: what runs when, when the first tank is in trouble, the oxygen of the tanks, and a cursor
 * through all of it.
 */
public final class OutagePicture {
    private static final double MARKS_PX = 34;
    private static final double CHART_PX = 190;
    private static final double AXIS_PX = 22;
    private static final double LEFT_PX = 12;
    private static final double RIGHT_PX = 6;
    private static final double MOST_NAMES = 0.34; // of the width
    private static final double REACH_PX = 14;

    /** Text is measured before there is anything to paint on. */
    private static final Graphics2D MEASURING = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();

    private final OutagePlayed played;
    private final List<OutageLane> lanes;
    private final OutageTime time;
    private final Rectangle2D plot;
    private final double topPx;
    private final OxygenChart chart;
    private final Ink ink;

    private OutagePicture(OutagePlayed played, Rectangle2D area, Ink ink) {
        this.played = played;
        this.ink = ink;
        this.lanes = OutageLane.of(played.drill());
        this.topPx = area.getY();
        double names = Math.min(OutageLanes.namesPx(lanes, ink) + ink.px(LEFT_PX), MOST_NAMES * area.getWidth());
        this.time = new OutageTime(
                area.getX() + names,
                area.getMaxX() - ink.px(RIGHT_PX),
                played.drill().scene().untilS());
        double top = topPx + lanes.size() * ink.px(OutageLanes.LANE_PX) + ink.px(MARKS_PX);
        this.plot = new Rectangle2D.Double(
                time.leftPx(), top, Math.max(1, time.rightPx() - time.leftPx()), ink.px(CHART_PX));
        this.chart = new OxygenChart(played, time, plot, ink);
    }

    public static double height(OutagePlayed played, Look look) {
        return OutageLane.of(played.drill()).size() * look.px(OutageLanes.LANE_PX)
                + look.px(MARKS_PX + CHART_PX + AXIS_PX);
    }

    /** Paints it from the top of the area. */
    public static void paint(OutageShown shown, Rectangle2D area, Look look, Graphics2D g) {
        new OutagePicture(shown.played(), area, Ink.flat(look, g)).paint(shown);
    }

    private static OutagePicture measured(OutagePlayed played, Rectangle2D area, Look look) {
        return new OutagePicture(played, area, Ink.flat(look, MEASURING));
    }

    /** The time at a place of the picture in this area, s. */
    public static double atS(OutagePlayed played, Rectangle2D area, Look look, double xPx) {
        return measured(played, area, look).time.at(xPx);
    }

    /** The tank whose line at worst is near a place of the chart. */
    public static Optional<TankDrill> tankAt(OutagePlayed played, Rectangle2D area, Look look, double xPx, double yPx) {
        OutagePicture picture = measured(played, area, look);
        return picture.plot.contains(xPx, yPx)
                ? played.near(
                        picture.time.at(xPx), picture.chart.gPerM3(yPx), picture.chart.reachGPerM3(look.px(REACH_PX)))
                : Optional.empty();
    }

    private void paint(OutageShown shown) {
        new OutageLanes(lanes, time, topPx, ink).paint();
        chart.paint(shown.tank());
        marks();
        cursor(shown);
    }

    private Font font() {
        return ink.type().drawing();
    }

    /** When the first tank is in trouble, and when all is well again: between lanes and chart. */
    private void marks() {
        double top = plot.getY() - ink.px(MARKS_PX);
        played.first().ifPresent(tank -> {
            alarmS(tank).ifPresent(s -> mark("alarm", s, top + ink.px(13), false));
            tank.dangerS(Case.CAUTIOUS).ifPresent(s -> mark("danger", s, top + ink.px(27), true));
        });
    }

    /** A time that is typed knows no alarm before it. */
    private static OptionalDouble alarmS(TankDrill tank) {
        return tank.tank().survivalS().isPresent() ? OptionalDouble.empty() : tank.alarmS(Case.CAUTIOUS);
    }

    /** A triangle that points to its time, open for alarm and full for danger, and its words beside it. */
    private void mark(String word, double s, double baseline, boolean isFull) {
        double x = time.x(s);
        double high = ink.px(8);
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x, baseline);
        triangle.lineTo(x - ink.px(4.5), baseline - high);
        triangle.lineTo(x + ink.px(4.5), baseline - high);
        triangle.closePath();
        if (isFull) {
            ink.fill(triangle, ink.palette().accent());
        }
        ink.draw(triangle, ink.palette().accent(), 1.2);
        String when = s == 0 ? "from the start" : ink.look().quantities().show(s, Dimension.DURATION);
        String says = word + " " + when + " at worst";
        double wide = ink.width(says, font());
        boolean fitsRight = x + ink.px(9) + wide <= time.rightPx();
        double left = fitsRight ? x + ink.px(9) : x - ink.px(9) - wide;
        ink.text(says, left, baseline, font(), ink.palette().accent());
    }

    private void cursor(OutageShown shown) {
        double x = time.x(shown.atS());
        ink.line(x, topPx, x, plot.getMaxY(), ink.palette().ink(), 1.4);
        double y = plot.getMaxY();
        Path2D handle = new Path2D.Double();
        handle.moveTo(x, y - ink.px(2));
        handle.lineTo(x + ink.px(6), y + ink.px(7));
        handle.lineTo(x - ink.px(6), y + ink.px(7));
        handle.closePath();
        ink.fill(handle, ink.palette().ink());
        shown.tank().flatMap(TankDrill::courses).ifPresent(both -> {
            dot(x, both.likely().atS(shown.atS()), false);
            dot(x, both.cautious().atS(shown.atS()), true);
        });
    }

    private void dot(double x, double gPerM3, boolean isFull) {
        var circle = StateMark.circle(x, chart.y(gPerM3), ink.px(3.6));
        ink.fill(circle, isFull ? ink.palette().ink() : ink.palette().sheet());
        ink.draw(circle, ink.palette().ink(), 1.4);
    }
}
