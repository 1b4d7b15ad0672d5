package lungfish.room;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A run of pipe, drawn as a line of corners. Runs are joined where an end of one touches another; a closed run joins its
 * own start.
 *
 * @param size a pipe size of the catalogue
 * @param fittings beyond the elbows and tees that the drawing shows
 */
public record Run(
        RunId id, String name, Role role, String size, boolean closed, List<Point> points, List<Fitting> fittings) {
    /** What the run is for. */
    public enum Role {
        MAIN,
        BRANCH,
        RISER
    }

    /**
     * A fitting in the run.
     *
     * @param kind a fitting class of the catalogue
     * @param atM along the run from its first point
     * @param opening of a valve: 0 shut to 1 open
     */
    public record Fitting(String kind, double atM, OptionalDouble opening) {}

    public Run {
        points = List.copyOf(points);
        fittings = List.copyOf(fittings);
    }

    /** Its corners, the first again at the end where it is closed. */
    public List<Point> corners() {
        if (!closed || points.size() < 2) {
            return points;
        }
        List<Point> all = new ArrayList<>(points);
        all.add(points.get(0));
        return List.copyOf(all);
    }

    /** Its length along the pipe, m. */
    public double lengthM() {
        List<Point> corners = corners();
        double sum = 0;
        for (int i = 1; i < corners.size(); i++) {
            sum += corners.get(i - 1).distanceM(corners.get(i));
        }
        return sum;
    }

    /** The point at a distance along the run; clamped to its ends. */
    public Point at(double alongM) {
        List<Point> corners = corners();
        double left = Math.max(0, alongM);
        for (int i = 1; i < corners.size(); i++) {
            double leg = corners.get(i - 1).distanceM(corners.get(i));
            if (left <= leg && leg > 0) {
                return corners.get(i - 1).towards(corners.get(i), left / leg);
            }
            left -= leg;
        }
        return corners.get(corners.size() - 1);
    }
}
