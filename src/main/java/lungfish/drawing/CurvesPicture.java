package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.blower.Wear;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/**
 * The tired curves of a few blowers on one plane, with what the room needs and where each runs. Curves are told apart by
 * their letter and by how they are dashed, never by colour alone.
 */
public final class CurvesPicture {
    private static final double HIGH_PX = 190;
    private static final double LEFT_PX = 48;
    private static final double BOTTOM_PX = 20;
    private static final double EDGE_PX = 8;
    private static final double POINT_PX = 3.5;
    /** Around a dot, where a blower runs at just what is needed. */
    private static final double RING_PX = 6;

    /** The plane goes so many times beyond the need at least, and at most: beyond that nobody looks. */
    private static final double LEAST_TIMES = 1.6;

    private static final double MOST_TIMES = 4;

    private static final double[] ALONG = {0.82, 0.7, 0.58, 0.46, 0.34, 0.9, 0.22};

    private final Ink ink;
    private final CurvePlot plot;
    private final LabelSpots spots;

    private CurvesPicture(Ink ink, Rectangle2D area, CurvePlot plot) {
        this.ink = ink;
        this.plot = plot;
        this.spots = new LabelSpots(area);
    }

    /**
     * One of them.
     *
     * @param letter by which it is named beside
     */
    public record Curve(String letter, Fleet fleet, Running tired) {}

    /** How high it likes to be, pixels. */
    public static double height(Look look) {
        return look.px(HIGH_PX);
    }

    /** Fills the area. */
    public static void paint(List<Curve> curves, Needed needed, Rectangle2D area, Look look, Graphics2D g) {
        Ink ink = Ink.flat(look, g);
        Rectangle2D box = new Rectangle2D.Double(
                area.getX() + ink.px(LEFT_PX),
                area.getY() + ink.px(EDGE_PX),
                area.getWidth() - ink.px(LEFT_PX + EDGE_PX),
                area.getHeight() - ink.px(EDGE_PX + BOTTOM_PX));
        double flow = curves.stream()
                .mapToDouble(each -> each.fleet().freeAt(0, Wear.TIRED))
                .max()
                .orElse(0);
        double pa = curves.stream()
                .mapToDouble(each -> Math.min(
                        each.fleet().shutPa(Wear.TIRED), 1.2 * each.fleet().continuousPa()))
                .max()
                .orElse(0);
        CurvePlot plot =
                new CurvePlot(box, within(1.05 * flow, needed.freeM3PerS()), within(1.05 * pa, needed.pressurePa()));
        new CurvesPicture(ink, area, plot).paint(curves, needed);
    }

    private static double within(double most, double need) {
        return Math.max(LEAST_TIMES * need, Math.min(MOST_TIMES * need, most));
    }

    private void paint(List<Curve> curves, Needed needed) {
        CurveAxes.paint(plot, ink, spots);
        java.awt.Shape before = ink.g().getClip();
        ink.g().clip(Marks.outset(plot.box(), ink.px(1)));
        for (int i = 0; i < curves.size(); i++) {
            ink.draw(plot.curve(curves.get(i).fleet(), Wear.TIRED), colour(i), stroke(i));
        }
        ink.draw(plot.demand(needed), ink.palette().ink(), 1.2);
        ink.g().setClip(before);
        Point2D needs = new Point2D.Double(plot.x(needed.freeM3PerS()), plot.y(needed.pressurePa()));
        for (int i = 0; i < curves.size(); i++) {
            dot(curves.get(i).tired(), colour(i));
        }
        ring(needs);
        word("needs", needs, ink.palette().ink());
        for (int i = 0; i < curves.size(); i++) {
            letter(curves.get(i), colour(i));
        }
    }

    private Color colour(int i) {
        return switch (i) {
            case 0 -> ink.palette().air();
            case 1 -> ink.palette().planned();
            default -> ink.palette().good();
        };
    }

    private Stroke stroke(int i) {
        return switch (i) {
            case 0 -> new BasicStroke((float) ink.px(2));
            case 1 -> ink.dashed(2, 6);
            default -> ink.dashed(2, 2.5);
        };
    }

    /** Open, so that whatever runs there is seen inside it. */
    private void ring(Point2D at) {
        spots.take(Boxes.around(at, ink.px(RING_PX + 1)), 10);
        ink.draw(
                StateMark.circle(at.getX(), at.getY(), ink.px(RING_PX)),
                ink.palette().ink(),
                1.8);
    }

    private void dot(Running running, Color colour) {
        double x = plot.x(running.freeM3PerS());
        double y = plot.y(running.gaugePa());
        if (plot.box().contains(x, y)) {
            spots.take(Boxes.around(new Point2D.Double(x, y), ink.px(POINT_PX + 1)), 10);
            ink.fill(StateMark.circle(x, y, ink.px(POINT_PX)), colour);
        }
    }

    private void word(String text, Point2D at, Color colour) {
        Font font = ink.type().drawingName();
        List<Rectangle2D> candidates = new ArrayList<>();
        for (double gap : new double[] {8, 12, 16}) {
            for (double[] way : new double[][] {{-1, -1}, {0, -1}, {-1, 0}, {1, 1}, {0, 1}}) {
                candidates.add(Boxes.beside(at, way[0], way[1], ink.px(gap), ink.width(text, font), ink.letters(font)));
            }
        }
        write(text, candidates, font, colour);
    }

    /** Outside its curve, where there is room for it. */
    private void letter(Curve curve, Color colour) {
        Font font = ink.type().label();
        double top = Math.min(plot.mostPa(), curve.fleet().shutPa(Wear.TIRED));
        List<Rectangle2D> candidates = new ArrayList<>();
        for (double share : ALONG) {
            double pa = share * top;
            double x = plot.x(curve.fleet().freeAt(pa, Wear.TIRED));
            if (x < plot.box().getMaxX() - ink.px(14)) {
                Point2D at = new Point2D.Double(x, plot.y(pa));
                candidates.add(Boxes.beside(at, 1, -1, ink.px(5), ink.width(curve.letter(), font), ink.letters(font)));
            }
        }
        if (!candidates.isEmpty()) {
            write(curve.letter(), candidates, font, colour);
        }
    }

    private void write(String text, List<Rectangle2D> candidates, Font font, Color colour) {
        Rectangle2D box = spots.place(candidates);
        spots.take(Marks.outset(box, ink.px(4)), 6);
        ink.text(text, box.getX(), box.getMaxY(), font, colour);
    }
}
