package lungfish.piping;

import java.util.ArrayList;
import java.util.List;
import lungfish.room.Point;
import lungfish.room.Run;

/** The geometry of one run: distances along it, the nearest place on it, and its elbows. */
final class RunLine {
    /** A corner that turns the pipe, and by how much. */
    record Bend(double alongM, double degrees) {}

    /** Below this a corner is a pipe sprung round, not an elbow. */
    private static final double LEAST_ELBOW_DEGREES = 20;

    private final Run run;
    private final List<Point> corners;
    private final double[] alongM;

    RunLine(Run run) {
        this.run = run;
        this.corners = run.corners();
        this.alongM = new double[corners.size()];
        for (int i = 1; i < alongM.length; i++) {
            alongM[i] = alongM[i - 1] + corners.get(i - 1).distanceM(corners.get(i));
        }
    }

    Run run() {
        return run;
    }

    double lengthM() {
        return alongM[alongM.length - 1];
    }

    /** Its two ends; none where it is closed. */
    List<Stop> ends() {
        return run.closed() ? List.of() : List.of(new Stop(run.id(), 0), new Stop(run.id(), lengthM()));
    }

    Point at(double along) {
        return run.at(along);
    }

    Run.Nearest nearest(Point point) {
        return run.nearest(point);
    }

    /** The corners that take an elbow; that of a closed run's start counts at distance 0. */
    List<Bend> bends() {
        List<Bend> bends = new ArrayList<>();
        for (int i = 1; i < corners.size() - 1; i++) {
            addBend(bends, alongM[i], corners.get(i - 1), corners.get(i), corners.get(i + 1));
        }
        if (run.closed() && corners.size() > 3) {
            addBend(bends, 0, corners.get(corners.size() - 2), corners.get(0), corners.get(1));
        }
        return bends;
    }

    private static void addBend(List<Bend> bends, double along, Point before, Point corner, Point after) {
        double degrees = turnDegrees(before, corner, after);
        if (degrees >= LEAST_ELBOW_DEGREES) {
            bends.add(new Bend(along, degrees));
        }
    }

    private static double turnDegrees(Point before, Point corner, Point after) {
        double a = before.distanceM(corner);
        double b = corner.distanceM(after);
        double c = before.distanceM(after);
        if (a == 0 || b == 0) {
            return 0;
        }
        double cosine = (a * a + b * b - c * c) / (2 * a * b);
        return 180 - Math.toDegrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
    }
}
