package lungfish.piping;

import java.util.ArrayList;
import java.util.List;
import lungfish.room.Point;
import lungfish.room.Run;

/** The geometry of one run: distances along it, the nearest place on it, and its elbows. */
final class RunLine {
    /** A corner that turns the pipe, and by how much. */
    record Bend(double alongM, double degrees) {}

    /** The place on a run that is nearest to a point, and how far away it is. */
    record Nearest(double alongM, double distanceM) {}

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

    Nearest nearest(Point point) {
        Nearest best = new Nearest(0, corners.get(0).distanceM(point));
        for (int i = 1; i < corners.size(); i++) {
            double share = shareOfFoot(corners.get(i - 1), corners.get(i), point);
            double distance = corners.get(i - 1).towards(corners.get(i), share).distanceM(point);
            if (distance < best.distanceM()) {
                best = new Nearest(alongM[i - 1] + share * (alongM[i] - alongM[i - 1]), distance);
            }
        }
        return best;
    }

    private static double shareOfFoot(Point from, Point to, Point point) {
        double dx = to.xM() - from.xM();
        double dy = to.yM() - from.yM();
        double dz = to.zM() - from.zM();
        double squared = dx * dx + dy * dy + dz * dz;
        if (squared == 0) {
            return 0;
        }
        double dot = (point.xM() - from.xM()) * dx + (point.yM() - from.yM()) * dy + (point.zM() - from.zM()) * dz;
        return Math.min(1, Math.max(0, dot / squared));
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
