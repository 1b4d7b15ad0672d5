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
 * @param surroundingsK temperature of the place that it passes, where that is not the room's air; absent: the room's
 */
public record Run(
        RunId id,
        String name,
        Role role,
        String size,
        boolean closed,
        List<Point> points,
        List<Fitting> fittings,
        OptionalDouble surroundingsK) {
    /** An end this close to another pipe is on it: the width of a fitting. */
    public static final double TOUCH_M = 0.03;

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

    /**
     * A place on a run, as seen from a point.
     *
     * @param alongM from the run's first point
     * @param distanceM from the point that was asked about
     */
    public record Nearest(double alongM, double distanceM) {}

    public Run {
        points = List.copyOf(points);
        fittings = List.copyOf(fittings);
    }

    /** A run in the room's air. */
    public Run(
            RunId id, String name, Role role, String size, boolean closed, List<Point> points, List<Fitting> fittings) {
        this(id, name, role, size, closed, points, fittings, OptionalDouble.empty());
    }

    /** The same run through these corners. */
    public Run through(List<Point> those, boolean nowClosed) {
        return new Run(id, name, role, size, nowClosed, those, fittings, surroundingsK);
    }

    /** The same run in another size of pipe. */
    public Run sized(String that) {
        return new Run(id, name, role, that, closed, points, fittings, surroundingsK);
    }

    /** The same run under another name. */
    public Run named(String that) {
        return new Run(id, that, role, size, closed, points, fittings, surroundingsK);
    }

    /** The same run for another purpose. */
    public Run as(Role that) {
        return new Run(id, name, that, size, closed, points, fittings, surroundingsK);
    }

    /** The same run with these fittings for all of its own. */
    public Run fitted(List<Fitting> those) {
        return new Run(id, name, role, size, closed, points, those, surroundingsK);
    }

    /** The same run in a place as warm as this, K; empty: in the room's air. */
    public Run surroundedBy(OptionalDouble that) {
        return new Run(id, name, role, size, closed, points, fittings, that);
    }

    /** The height of its lowest place above the floor, m: where water gathers in it. */
    public double lowestM() {
        return points.stream().mapToDouble(Point::zM).min().orElse(0);
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

    /** The place on it that is nearest to a point. */
    public Nearest nearest(Point point) {
        List<Point> corners = corners();
        Nearest best = new Nearest(0, corners.get(0).distanceM(point));
        double before = 0;
        for (int i = 1; i < corners.size(); i++) {
            Point from = corners.get(i - 1);
            Point to = corners.get(i);
            double share = point.footShare(from, to);
            double distance = from.towards(to, share).distanceM(point);
            double leg = from.distanceM(to);
            if (distance < best.distanceM()) {
                best = new Nearest(before + share * leg, distance);
            }
            before += leg;
        }
        return best;
    }
}
