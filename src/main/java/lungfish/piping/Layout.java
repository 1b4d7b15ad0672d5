package lungfish.piping;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.jspecify.annotations.Nullable;

/** The runs of a room, and the questions that drawing asks of them: where is a tap, what is nearest. */
final class Layout {
    /** A place on a run and its distance from the point that was asked about. */
    record Hit(Stop stop, double distanceM) {}

    private final Map<RunId, RunLine> lines = new LinkedHashMap<>();

    Layout(Room room) {
        for (Run run : room.runs()) {
            if (run.points().size() >= 2) {
                lines.put(run.id(), new RunLine(run));
            }
        }
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    List<RunLine> lines() {
        return List.copyOf(lines.values());
    }

    RunLine line(RunId id) {
        RunLine line = lines.get(id);
        if (line == null) {
            throw new IllegalArgumentException("no run '" + id + "'");
        }
        return line;
    }

    Point at(Stop stop) {
        return line(stop.run()).at(stop.alongM());
    }

    /** The stop of a tap on a run, if that run exists; clamped to its length. */
    Optional<Stop> tap(Outlet.OnRun tap) {
        RunLine line = lines.get(tap.run());
        return line == null
                ? Optional.empty()
                : Optional.of(new Stop(tap.run(), Math.min(line.lengthM(), Math.max(0, tap.atM()))));
    }

    /** The nearest place on any run; of two equally near ones, that of the run drawn first. */
    Optional<Hit> nearest(Point point) {
        return nearest(point, null);
    }

    /** The nearest place on any run but one. */
    Optional<Hit> nearestBut(RunId without, Point point) {
        return nearest(point, without);
    }

    private Optional<Hit> nearest(Point point, @Nullable RunId without) {
        Hit best = null;
        for (RunLine line : lines.values()) {
            if (line.run().id().equals(without)) {
                continue;
            }
            Run.Nearest near = line.nearest(point);
            if (best == null || near.distanceM() < best.distanceM()) {
                best = new Hit(new Stop(line.run().id(), near.alongM()), near.distanceM());
            }
        }
        return Optional.ofNullable(best);
    }
}
