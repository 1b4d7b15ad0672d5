package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.blower.Wear;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/** The blower's curve, new and tired, what the room needs, and where the blower runs. */
public final class CurvePicture {
    private static final double LEFT_PX = 40;
    private static final double BOTTOM_PX = 20;
    private static final double TOP_PX = 6;
    private static final double RIGHT_PX = 8;
    private static final double POINT_PX = 4.5;
    private static final double[] GAPS_PX = {8, 10, 13, 17};
    /** Ways from a point to its word, the best first: across and down. */
    private static final double[][] WAYS = {{0, -1}, {1, 0}, {-1, -1}, {1, -1}, {0, 1}, {-1, 1}, {1, 1}};

    private static final double[] BACK_PX = {8, 16, 24, 34, 46, 60};
    private static final double[] ALONG = {0.55, 0.45, 0.65, 0.35, 0.75, 0.25};

    private final Ink ink;
    private final Fleet fleet;
    private final Needed needed;
    private final Running running;
    private final CurvePlot plot;
    private final LabelSpots spots;

    private CurvePicture(Ink ink, Rectangle2D area, Fleet fleet, Needed needed, Running running) {
        this.ink = ink;
        this.fleet = fleet;
        this.needed = needed;
        this.running = running;
        Rectangle2D box = new Rectangle2D.Double(
                area.getX() + ink.px(LEFT_PX),
                area.getY() + ink.px(TOP_PX),
                area.getWidth() - ink.px(LEFT_PX + RIGHT_PX),
                area.getHeight() - ink.px(TOP_PX + BOTTOM_PX));
        this.plot = new CurvePlot(
                box,
                1.05 * Math.max(fleet.freeAt(0, Wear.NEW), needed.freeM3PerS()),
                1.08 * Math.max(finite(fleet), needed.pressurePa()));
        this.spots = new LabelSpots(area);
    }

    /** Where a curve never comes down, it is drawn to its rating. */
    private static double finite(Fleet fleet) {
        double shut = fleet.shutPa(Wear.NEW);
        return Double.isInfinite(shut) ? 1.2 * fleet.continuousPa() : shut;
    }

    /** Fills the area, with the blower tired and the devices due for cleaning; nothing where there is no duty. */
    public static void paint(Plan plan, Rectangle2D area, Look look, Graphics2D g) {
        plan.duty()
                .ifPresent(duty -> paint(duty, duty.needed(), duty.candidate().tired(), area, look, g));
    }

    /** Fills the area, with what is needed and where the blower runs at another age. */
    public static void paint(Duty duty, Needed needed, Running running, Rectangle2D area, Look look, Graphics2D g) {
        Fleet fleet = duty.candidate().fleet();
        new CurvePicture(Ink.flat(look, g), area, fleet, needed, running).paint();
    }

    private void paint() {
        CurveAxes.paint(plot, ink, spots);
        line(plot.curve(fleet, Wear.NEW), ink.palette().air(), new BasicStroke((float) ink.px(2)));
        line(plot.curve(fleet, Wear.TIRED), ink.palette().air(), ink.dashed(1.6, 3));
        line(plot.demand(needed), ink.palette().ink(), new BasicStroke((float) ink.px(1.4)));
        points();
        curveName("new", Wear.NEW, 1);
        curveName("tired", Wear.TIRED, -1);
    }

    private void line(Path2D path, Color colour, java.awt.Stroke stroke) {
        ink.draw(path, colour, stroke);
        spots.takeAlong(path, ink.px(2), 10);
    }

    private void points() {
        Point2D needs = at(needed.freeM3PerS(), needed.pressurePa());
        Point2D runs = at(running.freeM3PerS(), running.gaugePa());
        double radius = ink.px(POINT_PX);
        spots.take(Boxes.around(needs, radius + ink.px(1)), 10);
        spots.take(Boxes.around(runs, radius + ink.px(1)), 10);
        ink.fill(
                StateMark.circle(needs.getX(), needs.getY(), radius),
                ink.palette().sheet());
        ink.draw(
                StateMark.circle(needs.getX(), needs.getY(), radius),
                ink.palette().ink(),
                1.8);
        ink.fill(
                StateMark.circle(runs.getX(), runs.getY(), radius),
                ink.palette().accent());
        word("needs", needs, ink.palette().ink());
        word("runs", runs, ink.palette().accent());
    }

    private Point2D at(double m3PerS, double pa) {
        return new Point2D.Double(plot.x(m3PerS), plot.y(pa));
    }

    /** Beside its point, on nothing that is drawn. */
    private void word(String word, Point2D at, Color colour) {
        Font font = ink.type().drawingName();
        double wide = ink.width(word, font);
        double high = ink.letters(font);
        List<Rectangle2D> candidates = new ArrayList<>();
        for (double gap : GAPS_PX) {
            for (double[] way : WAYS) {
                candidates.add(Boxes.beside(at, way[0], way[1], ink.px(gap), wide, high));
            }
        }
        for (double back : BACK_PX) { // over or under the line that leads to the point
            Point2D before = new Point2D.Double(at.getX() - ink.px(back), at.getY());
            candidates.add(Boxes.beside(before, -1, -1, ink.px(5), wide, high));
            candidates.add(Boxes.beside(before, -1, 1, ink.px(5), wide, high));
        }
        write(word, candidates, font, colour);
    }

    /** Outside its curve or inside, somewhere along it. */
    private void curveName(String name, Wear wear, int side) {
        Font font = ink.type().drawing();
        double top = Math.min(plot.mostPa(), fleet.shutPa(wear));
        List<Rectangle2D> candidates = new ArrayList<>();
        for (double gap : new double[] {5, 8, 12}) {
            for (double share : ALONG) {
                Point2D at = at(fleet.freeAt(share * top, wear), share * top);
                candidates.add(Boxes.beside(at, side, -side, ink.px(gap), ink.width(name, font), ink.letters(font)));
            }
        }
        write(name, candidates, font, ink.palette().air());
    }

    private void write(String text, List<Rectangle2D> candidates, Font font, Color colour) {
        Rectangle2D box = spots.place(candidates);
        spots.take(Marks.outset(box, ink.px(5)), 6);
        ink.text(text, box.getX(), box.getMaxY(), font, colour);
    }
}
