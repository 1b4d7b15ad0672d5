package lungfish.drawing;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import lungfish.drawing.SceneParts.FittingPart;
import lungfish.room.Run;

/**
 * Paints what is fitted into the pipe by the signs of a piping plan: a valve is two triangles that meet, filled where it is
 * shut; a check valve one triangle against a bar; a union three bars; a gauge a dial on a stem; a cap a bar at the end.
 */
final class FittingPainter {
    private static final double HALF_PX = 7;
    private static final double HIGH_PX = 5.5;
    private static final double STEM_PX = 13;
    private static final double DIAL_PX = 4.5;
    private static final double PEN_PX = 1.4;

    private final Ink ink;
    private final AffineTransform along;

    private FittingPainter(FittingPart part, Ink ink) {
        this.ink = ink;
        this.along = AffineTransform.getTranslateInstance(
                ink.view().xPx(part.xM()), ink.view().yPx(part.yM()));
        along.concatenate(new AffineTransform(part.alongX(), part.alongY(), -part.alongY(), part.alongX(), 0, 0));
    }

    static void paint(FittingPart part, Ink ink) {
        FittingPainter painter = new FittingPainter(part, ink);
        Run.Fitting fitting = part.fitting();
        switch (Sign.of(fitting.kind())) {
            case VALVE -> painter.valve(fitting.opening().orElse(1) <= 0);
            case CHECK -> painter.check();
            case UNION -> painter.bars(-3, 0, 3);
            case GAUGE -> painter.gauge();
            case CAP -> painter.bars(0);
            case BAND -> painter.bars(-2, 2);
        }
    }

    /** The sign by which a class of fitting is drawn. */
    private enum Sign {
        VALVE,
        CHECK,
        UNION,
        GAUGE,
        CAP,
        BAND;

        static Sign of(String kind) {
            if (kind.endsWith("-valve")) {
                return VALVE;
            }
            if (kind.startsWith("check-")) {
                return CHECK;
            }
            return switch (kind) {
                case "union" -> UNION;
                case "gauge" -> GAUGE;
                case "cap" -> CAP;
                default -> BAND;
            };
        }
    }

    private Color line() {
        return ink.palette().ink();
    }

    private Path2D triangle(double from, double to) {
        Path2D path = new Path2D.Double();
        path.moveTo(from, -ink.mark(HIGH_PX));
        path.lineTo(to, 0);
        path.lineTo(from, ink.mark(HIGH_PX));
        path.closePath();
        return path;
    }

    private void valve(boolean shut) {
        Path2D both = triangle(-ink.mark(HALF_PX), 0);
        both.append(triangle(ink.mark(HALF_PX), 0), false);
        var shape = along.createTransformedShape(both);
        ink.fill(shape, shut ? line() : ink.palette().sheet());
        ink.draw(shape, line(), PEN_PX);
    }

    private void check() {
        var shape = along.createTransformedShape(triangle(-ink.mark(HALF_PX), ink.mark(HALF_PX) - 1));
        ink.fill(shape, ink.palette().sheet());
        ink.draw(shape, line(), PEN_PX);
        bar(HALF_PX);
    }

    private void bars(double... atPx) {
        double least = ink.mark(atPx[0]);
        double most = ink.mark(atPx[atPx.length - 1]);
        double high = ink.mark(HIGH_PX);
        ink.fill(
                along.createTransformedShape(new Rectangle2D.Double(least, -high, most - least, 2 * high)),
                ink.palette().sheet());
        for (double at : atPx) {
            bar(at);
        }
    }

    private void bar(double atPx) {
        double at = ink.mark(atPx);
        double high = ink.mark(HIGH_PX + 0.5);
        ink.draw(along.createTransformedShape(new Line2D.Double(at, -high, at, high)), line(), PEN_PX);
    }

    private void gauge() {
        double stem = ink.mark(STEM_PX);
        double dial = ink.mark(DIAL_PX);
        ink.draw(along.createTransformedShape(new Line2D.Double(0, 0, 0, -stem + dial)), line(), PEN_PX);
        var face = along.createTransformedShape(new Ellipse2D.Double(-dial, -stem - dial, 2 * dial, 2 * dial));
        ink.fill(face, ink.palette().sheet());
        ink.draw(face, line(), PEN_PX);
        ink.draw(
                along.createTransformedShape(new Line2D.Double(0, -stem, dial * 0.55, -stem - dial * 0.55)), line(), 1);
    }
}
