package lungfish.drawing;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The mark of an outlet's state: the shape tells it, the colour only helps. The same on drawings, in legends and tables. */
public final class StateMark {
    /** Radius of a served outlet's dot, pixels at 100 %. */
    static final double RADIUS_PX = 3.2;

    private StateMark() {}

    /** Paints a mark of this radius (pixels, as they are) with its middle here. */
    public static void paint(OutletState state, double x, double y, double radius, Look look, java.awt.Graphics2D g) {
        paint(state, x, y, radius, Ink.flat(look, g));
    }

    static void paint(OutletState state, double x, double y, double radius, Ink ink) {
        Palette palette = ink.palette();
        switch (state) {
            case SERVED -> ink.fill(circle(x, y, radius), palette.air());
            case INDEX -> index(x, y, radius, ink);
            case STARVED -> ink.fill(triangle(x, y, radius * 1.45), palette.accent());
            case GREEDY -> ink.fill(square(x, y, radius * 1.05), palette.ink());
            case PLANNED -> ink.draw(circle(x, y, radius * 0.9), palette.planned(), 1.2);
            case CLOSED -> cross(x, y, radius, ink);
            case UNKNOWN -> ink.fill(circle(x, y, radius * 0.6), palette.softInk());
        }
    }

    private static void index(double x, double y, double radius, Ink ink) {
        ink.fill(circle(x, y, radius * 2.2), ink.palette().sheet());
        ink.fill(circle(x, y, radius), ink.palette().accent());
        ink.draw(circle(x, y, radius * 2.2), ink.palette().accent(), 1.5);
    }

    private static void cross(double x, double y, double radius, Ink ink) {
        ink.line(x - radius, y - radius, x + radius, y + radius, ink.palette().ink(), 1.6);
        ink.line(x - radius, y + radius, x + radius, y - radius, ink.palette().ink(), 1.6);
    }

    static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    private static Rectangle2D square(double x, double y, double half) {
        return new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
    }

    private static Path2D triangle(double x, double y, double radius) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - radius);
        path.lineTo(x + radius * 0.9, y + radius * 0.7);
        path.lineTo(x - radius * 0.9, y + radius * 0.7);
        path.closePath();
        return path;
    }
}
