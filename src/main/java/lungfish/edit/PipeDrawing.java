package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lungfish.catalogue.PipeSize;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;

/** New runs of pipe: loops, branches and risers, drawn corner by corner, and ties between them. */
public final class PipeDrawing {
    private static final double SAME_PLACE_M = 0.001;

    /** Steeper than this, up against along: a riser. */
    private static final double STEEP = 2;

    /** What is said where other than two pipes are to be tied. */
    public static final Refused NEEDS_TWO =
            Refused.because("A tie joins two pipes.", "Choose two: click one, then the other with Shift.");

    private PipeDrawing() {}

    /**
     * A run through these corners, in the order drawn. Where the last meets the first it is a loop; where an end touches
     * another pipe it is a branch of it; where it goes up it is a riser.
     */
    public static Attempt draw(Room room, PipeSize size, List<Point> corners) {
        List<Point> points = distinct(corners);
        boolean closed = points.size() > 3 && points.get(0).distanceM(points.get(points.size() - 1)) <= Run.TOUCH_M;
        List<Point> open = closed ? points.subList(0, points.size() - 1) : points;
        if (open.size() < 2) {
            return Refused.because("A pipe needs two ends that lie apart.", "Draw it longer.");
        }
        Run.Role role = closed ? Run.Role.MAIN : role(room, open);
        String name = closed ? "Loop" : name(role);
        return Edit.tried(
                room,
                "Draw a " + name.toLowerCase(Locale.ROOT),
                before -> with(before, name, role, size, open, closed));
    }

    private static List<Point> distinct(List<Point> corners) {
        List<Point> points = new ArrayList<>();
        for (Point corner : corners) {
            Point clean = Metres.clean(corner);
            if (points.isEmpty() || points.get(points.size() - 1).distanceM(clean) > SAME_PLACE_M) {
                points.add(clean);
            }
        }
        return points;
    }

    private static Run.Role role(Room room, List<Point> points) {
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        double along = Math.hypot(last.xM() - first.xM(), last.yM() - first.yM());
        if (Math.abs(last.zM() - first.zM()) > STEEP * along) {
            return Run.Role.RISER;
        }
        return touchesAPipe(room, first) || touchesAPipe(room, last) ? Run.Role.BRANCH : Run.Role.MAIN;
    }

    /** Whether an end lies on a pipe that is there. */
    public static boolean touchesAPipe(Room room, Point end) {
        return room.runs().stream()
                .filter(Sound::isLine)
                .anyMatch(run -> run.nearest(end).distanceM() <= Run.TOUCH_M);
    }

    private static String name(Run.Role role) {
        return switch (role) {
            case MAIN -> "Main";
            case BRANCH -> "Branch";
            case RISER -> "Riser";
        };
    }

    private static Room with(
            Room room, String wanted, Run.Role role, PipeSize size, List<Point> points, boolean closed) {
        Set<String> taken = Taken.runNames(room);
        RunId id = new RunId(Fresh.runs(room).like(wanted.toLowerCase(Locale.ROOT)));
        List<Run> runs = new ArrayList<>(room.runs());
        runs.add(new Run(id, Names.unique(wanted, taken), role, size.id(), closed, points, List.of()));
        return room.withRuns(runs);
    }

    /** A pipe from one place on the pipe to another, with one corner where they are not in line: two loops become one net. */
    public static Attempt tie(Room room, Outlet.OnRun from, Outlet.OnRun to, PipeSize size) {
        List<Point> ends = new ArrayList<>();
        Seats.place(room, from).ifPresent(ends::add);
        Seats.place(room, to).ifPresent(ends::add);
        if (ends.size() < 2) {
            return Refused.nothing("pipe");
        }
        List<Point> points = distinct(bent(ends.get(0), ends.get(1)));
        return points.size() < 2
                ? Refused.because("Both ends of the tie are at the same place.", "Choose two places that lie apart.")
                : Edit.tried(
                        room, "Tie two pipes", before -> with(before, "Tie", Run.Role.BRANCH, size, points, false));
    }

    /** A tie between two pipes where they come nearest to each other: at a corner of one of them. */
    public static Attempt tie(Room room, RunId one, RunId other, PipeSize size) {
        Optional<Run> from = Find.run(room, one.text()).filter(Sound::isLine);
        Optional<Run> to = Find.run(room, other.text()).filter(Sound::isLine);
        if (from.isEmpty() || to.isEmpty()) {
            return Refused.nothing("pipe");
        }
        Point nearest = Stream.concat(from.get().points().stream(), to.get().points().stream())
                .min(Comparator.comparingDouble(
                        point -> from.get().nearest(point).distanceM()
                                + to.get().nearest(point).distanceM()))
                .orElseThrow();
        return tie(room, Seats.on(from.get(), nearest), Seats.on(to.get(), nearest), size);
    }

    private static List<Point> bent(Point from, Point to) {
        boolean inLine = Math.abs(from.xM() - to.xM()) <= SAME_PLACE_M || Math.abs(from.yM() - to.yM()) <= SAME_PLACE_M;
        return inLine ? List.of(from, to) : List.of(from, new Point(to.xM(), from.yM(), from.zM()), to);
    }
}
