package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.util.List;
import lungfish.room.Point;
import lungfish.room.Run;

/** Paints the pipe: a double line, and in it the bubbles. */
final class PipePainter {
    /** Between its two lines. */
    static final double BORE_PX = 7;

    static final double WALL_PX = 1.3;
    private static final double RISER_PX = 6.5;

    /** Less aside than this is straight up. */
    private static final double UPRIGHT_M = 0.005;

    private PipePainter() {}

    static void paint(RoomScene scene, Ink ink) {
        List<Run> runs = scene.room().runs();
        runs.forEach(run -> ink.draw(path(run, ink.view()), ink.palette().ink(), stroke(BORE_PX + 2 * WALL_PX, ink)));
        runs.forEach(run -> ink.draw(path(run, ink.view()), ink.palette().sheet(), stroke(BORE_PX, ink)));
        BubblePainter.paint(scene.stretches(), ink);
        runs.forEach(run -> risers(run, ink));
    }

    /** Where pipe goes straight up or down it is seen from its end: its bore, and in it the way on. */
    private static void risers(Run run, Ink ink) {
        List<Point> corners = run.corners();
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            if (Math.hypot(to.xM() - from.xM(), to.yM() - from.yM()) < UPRIGHT_M && from.zM() != to.zM()) {
                double x = ink.view().xPx(to.xM());
                double y = ink.view().yPx(to.yM());
                Shape end = StateMark.circle(x, y, ink.mark(RISER_PX));
                ink.fill(end, ink.palette().sheet());
                ink.draw(end, ink.palette().ink(), WALL_PX);
                ink.fill(
                        StateMark.circle(x, y, ink.mark(RISER_PX / 3)),
                        ink.palette().ink());
            }
        }
    }

    private static Stroke stroke(double widthPx, Ink ink) {
        return new BasicStroke((float) ink.mark(widthPx), BasicStroke.CAP_SQUARE, BasicStroke.JOIN_ROUND);
    }

    static Path2D path(Run run, Viewport view) {
        Path2D path = new Path2D.Double();
        List<Point> points = run.points();
        for (int i = 0; i < points.size(); i++) {
            double x = view.xPx(points.get(i).xM());
            double y = view.yPx(points.get(i).yM());
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        if (run.closed() && points.size() > 1) {
            path.closePath();
        }
        return path;
    }
}
