package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import lungfish.blower.Wear;
import lungfish.network.Drop;
import lungfish.network.Drops;
import lungfish.network.Tuned;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.sizing.Fleet;
import lungfish.sizing.Running;

/** The blower's curve, new and tired, what the room needs, and where the blower runs. */
public final class CurvePicture {
    private static final int POINTS = 60;
    private static final double BEYOND = 1.12; // the demand goes on a little behind its point
    private static final double LEFT_PX = 40;
    private static final double BOTTOM_PX = 20;
    private static final double TOP_PX = 14;
    private static final double RIGHT_PX = 8;

    private final Ink ink;
    private final Rectangle2D plot;
    private final Duty duty;
    private final double mostPa;
    private final double mostM3PerS;

    private CurvePicture(Ink ink, Rectangle2D area, Duty duty) {
        this.ink = ink;
        this.plot = new Rectangle2D.Double(
                area.getX() + ink.px(LEFT_PX),
                area.getY() + ink.px(TOP_PX),
                area.getWidth() - ink.px(LEFT_PX + RIGHT_PX),
                area.getHeight() - ink.px(TOP_PX + BOTTOM_PX));
        this.duty = duty;
        Fleet fleet = duty.candidate().fleet();
        this.mostPa = 1.08 * Math.max(finite(fleet), duty.needed().pressurePa());
        this.mostM3PerS =
                1.05 * Math.max(fleet.freeAt(0, Wear.NEW), duty.needed().freeM3PerS());
    }

    /** Where a curve never comes down, it is drawn to its rating. */
    private static double finite(Fleet fleet) {
        double shut = fleet.shutPa(Wear.NEW);
        return Double.isInfinite(shut) ? 1.2 * fleet.continuousPa() : shut;
    }

    /** Fills the area; nothing where there is no duty. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        plan.duty().ifPresent(duty -> new CurvePicture(Ink.flat(look, g), area, duty).paint());
    }

    private void paint() {
        axes();
        curve(Wear.NEW, new BasicStroke((float) ink.px(2)));
        curve(Wear.TIRED, ink.dashed(1.6, 3));
        names();
        demand();
        points();
    }

    private double x(double m3PerS) {
        return plot.getX() + plot.getWidth() * m3PerS / mostM3PerS;
    }

    private double y(double pa) {
        return plot.getMaxY() - plot.getHeight() * pa / mostPa;
    }

    private void axes() {
        ink.line(
                plot.getX(),
                plot.getY(),
                plot.getX(),
                plot.getMaxY(),
                ink.palette().softInk(),
                1);
        ink.line(
                plot.getX(),
                plot.getMaxY(),
                plot.getMaxX(),
                plot.getMaxY(),
                ink.palette().softInk(),
                1);
        Font font = ink.type().drawing();
        AxisSteps flows = AxisSteps.upTo(mostM3PerS, Dimension.AIR_FLOW, 4, ink.look());
        for (int i = 1; i <= flows.count(); i++) {
            double x = x(flows.at(i));
            ink.line(
                    x,
                    plot.getMaxY(),
                    x,
                    plot.getMaxY() + ink.px(3),
                    ink.palette().softInk(),
                    1);
            ink.textAround(
                    flows.label(i),
                    x,
                    plot.getMaxY() + ink.px(15),
                    font,
                    ink.palette().softInk());
        }
        AxisSteps pressures = AxisSteps.upTo(mostPa, Dimension.PRESSURE, 3, ink.look());
        for (int i = 1; i <= pressures.count(); i++) {
            double y = y(pressures.at(i));
            ink.line(plot.getX(), y, plot.getMaxX(), y, ink.palette().floor(), 1);
            ink.textEnding(
                    pressures.label(i),
                    plot.getX() - ink.px(5),
                    y + ink.px(4),
                    font,
                    ink.palette().softInk());
        }
    }

    private void curve(Wear wear, java.awt.Stroke stroke) {
        Fleet fleet = duty.candidate().fleet();
        Path2D path = new Path2D.Double();
        double top = Math.min(mostPa, fleet.shutPa(wear));
        for (int i = 0; i <= POINTS; i++) {
            double pa = top * i / POINTS;
            add(path, x(fleet.freeAt(pa, wear)), y(pa));
        }
        ink.draw(path, ink.palette().air(), stroke);
    }

    /**
     * What the room asks for when every outlet gets the same share of its target: the index outlet's own law, and the
     * pipe's part as the square of the flow, as its fittings take it.
     */
    private void demand() {
        Tuned tuned = duty.needed().tuned();
        Drop index = tuned.network().drops().get(tuned.indexDrop());
        double target = index.targetM3PerS().orElse(0);
        Path2D path = new Path2D.Double();
        for (int i = 0; i <= POINTS; i++) {
            double share = BEYOND * i / POINTS;
            double pa = Drops.needed(tuned.network().conditions(), index, share * target)
                            .totalPa()
                    + share * share * duty.needed().pipePa();
            add(path, x(share * duty.needed().freeM3PerS()), y(pa));
        }
        ink.draw(path, ink.palette().ink(), new BasicStroke((float) ink.px(1.4)));
    }

    private static void add(Path2D path, double x, double y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }

    private void points() {
        double needX = x(duty.needed().freeM3PerS());
        double needY = y(duty.needed().pressurePa());
        double radius = ink.px(4.5);
        Running tired = duty.candidate().tired();
        double runsX = x(tired.freeM3PerS());
        double runsY = y(tired.gaugePa());
        ink.fill(StateMark.circle(needX, needY, radius), ink.palette().sheet());
        ink.draw(StateMark.circle(needX, needY, radius), ink.palette().ink(), 1.8);
        ink.fill(StateMark.circle(runsX, runsY, radius), ink.palette().accent());
        Font font = ink.type().drawingName();
        ink.textAround("needs", needX, needY + ink.px(18), font, ink.palette().ink());
        boolean isClose = Math.abs(needX - runsX) < ink.px(44);
        double below = isClose ? ink.px(-10) : ink.px(18);
        ink.textAround("runs", runsX, runsY + below, font, ink.palette().accent());
    }

    /** The names of the two curves, where they are well apart. */
    private void names() {
        Fleet fleet = duty.candidate().fleet();
        double pa = 0.55 * Math.min(mostPa, fleet.shutPa(Wear.TIRED));
        Font font = ink.type().drawing();
        ink.text(
                "new",
                x(fleet.freeAt(pa, Wear.NEW)) + ink.px(8),
                y(pa) - ink.px(2),
                font,
                ink.palette().air());
        ink.textEnding(
                "tired",
                x(fleet.freeAt(pa, Wear.TIRED)) - ink.px(8),
                y(pa) + ink.px(8),
                font,
                ink.palette().air());
    }
}
