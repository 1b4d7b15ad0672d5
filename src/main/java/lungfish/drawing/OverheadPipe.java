package lungfish.drawing;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.DoubleFunction;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/** Pipes often run over racks: keeps the outlets' marks from under them. */
final class OverheadPipe {
    /** Places across a strip, the best first: its middle, and two that still lie inside it. */
    private static final double[] SHARES = {0.5, 0.8, 0.2};

    /** A mark nearer than this to a pipe's middle line would be read as a bubble in it. */
    private static final double CLEAR_M = 0.09;

    private final List<Run> runs;

    OverheadPipe(Room room) {
        this.runs = room.runs();
    }

    /** The first of the places that is clear, or else the clearest. */
    Point clearOf(DoubleFunction<Point> places) {
        Point best = places.apply(SHARES[0]);
        double bestM = awayM(best);
        for (int i = 1; i < SHARES.length && bestM < CLEAR_M; i++) {
            Point other = places.apply(SHARES[i]);
            double otherM = awayM(other);
            if (otherM > bestM + 1e-3) {
                best = other;
                bestM = otherM;
            }
        }
        return best;
    }

    private double awayM(Point point) {
        double least = Double.POSITIVE_INFINITY;
        for (Run run : runs) {
            List<Point> corners = run.corners();
            for (int i = 1; i < corners.size(); i++) {
                Point from = corners.get(i - 1);
                Point to = corners.get(i);
                least = Math.min(
                        least, Line2D.ptSegDist(from.xM(), from.yM(), to.xM(), to.yM(), point.xM(), point.yM()));
            }
        }
        return least;
    }
}
