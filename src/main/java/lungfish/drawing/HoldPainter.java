package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Paints where one can take hold of a thing, and small things that are chosen or pointed at. */
final class HoldPainter {
    private static final double HANDLE_PX = 4;
    private static final double KNOB_PX = 3.5;
    private static final double RING_PX = 10;
    private static final double BESIDE_PX = 11;
    private static final double CROSS_PX = 15;
    private static final double HOLE_PX = 4;

    private HoldPainter() {}

    /** Paints one of these; leaves all other strokes to others. */
    static void paint(Sketch.Stroke stroke, Ink ink) {
        if (stroke instanceof Sketch.Handle handle) {
            ink.fill(square(handle.xM(), handle.yM(), ink), ink.palette().sheet());
            ink.draw(square(handle.xM(), handle.yM(), ink), ink.palette().ink(), 1.4);
        } else if (stroke instanceof Sketch.Held held) {
            ink.fill(square(held.xM(), held.yM(), ink), ink.palette().ink());
            ink.draw(square(held.xM(), held.yM(), ink), ink.palette().ink(), 3);
        } else if (stroke instanceof Sketch.Knob knob) {
            circle(knob.xM(), knob.yM(), KNOB_PX, true, 1.2, ink);
        } else if (stroke instanceof Sketch.Ring ring) {
            circle(ring.xM(), ring.yM(), RING_PX, false, ring.strong() ? 1.8 : 1, ink);
        } else if (stroke instanceof Sketch.Beside beside) {
            beside(beside, ink);
        } else if (stroke instanceof Sketch.Cross cross) {
            cross(ink.view().px(cross.xM(), cross.yM()), ink);
        }
    }

    private static Rectangle2D square(double xM, double yM, Ink ink) {
        double half = ink.px(HANDLE_PX);
        return new Rectangle2D.Double(ink.view().xPx(xM) - half, ink.view().yPx(yM) - half, 2 * half, 2 * half);
    }

    private static void circle(double xM, double yM, double radiusPx, boolean filled, double penPx, Ink ink) {
        var circle = StateMark.circle(ink.view().xPx(xM), ink.view().yPx(yM), ink.px(radiusPx));
        if (filled) {
            ink.fill(circle, ink.palette().sheet());
        }
        ink.draw(circle, ink.palette().ink(), penPx);
    }

    private static void beside(Sketch.Beside line, Ink ink) {
        var path = new Line2D.Double(
                ink.view().px(line.fromXM(), line.fromYM()), ink.view().px(line.toXM(), line.toYM()));
        var around = new BasicStroke((float) ink.px(BESIDE_PX), BasicStroke.CAP_SQUARE, BasicStroke.JOIN_ROUND);
        ink.draw(new Area(around.createStrokedShape(path)), ink.palette().ink(), line.strong() ? 1.6 : 1);
    }

    /** Four arms that leave the place itself to be seen, on a pale ground so that they are seen over anything. */
    private static void cross(Point2D at, Ink ink) {
        double in = ink.px(HOLE_PX);
        double out = ink.px(CROSS_PX);
        for (int way = 0; way < 4; way++) {
            double dx = Math.rint(Math.cos(way * Math.PI / 2));
            double dy = Math.rint(Math.sin(way * Math.PI / 2));
            double fromX = at.getX() + in * dx;
            double fromY = at.getY() + in * dy;
            double toX = at.getX() + out * dx;
            double toY = at.getY() + out * dy;
            ink.line(fromX, fromY, toX, toY, ink.palette().sheet(), 4);
            ink.line(fromX, fromY, toX, toY, ink.palette().ink(), 1.8);
        }
    }
}
