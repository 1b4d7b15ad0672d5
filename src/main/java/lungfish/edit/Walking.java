package lungfish.edit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import org.jspecify.annotations.Nullable;

/**
 * How the keys walk a room from above: along what stands on the floor, then its doors and inner walls; from a pipe down to
 * what sits on it, along that, and up again.
 */
public final class Walking {
    /** A thing on a pipe, and how far along. */
    private record Stop(Part part, double alongM) {}

    private Walking() {}

    /** The next one, or with -1 the one before; from nothing, the first or the last. */
    public static Selection along(Room room, Selection from, int way) {
        return from.lead()
                .filter(lead -> pipe(room, lead).isPresent())
                .map(lead -> stepped(on(room, lead), lead, way))
                .orElseGet(() -> onFloor(room, from, way));
    }

    private static Selection onFloor(Room room, Selection from, int way) {
        List<Part> floor = floor(room);
        boolean isOnFloor =
                from.isEmpty() || from.lead().filter(floor::contains).isPresent();
        if (isOnFloor) {
            return floor.isEmpty() ? Selection.NONE : stepped(floor, from.lead().orElse(null), way);
        }
        return way > 0 ? Selecting.next(room, from) : Selecting.previous(room, from);
    }

    /** From a pipe to the first thing on it; from all else the next one. */
    public static Selection down(Room room, Selection from) {
        return from.lead()
                .filter(lead -> lead.kind() == Part.Kind.RUN)
                .flatMap(lead -> Find.run(room, lead.id()))
                .flatMap(run -> on(room, run).stream().findFirst())
                .map(Selection::of)
                .orElseGet(() -> along(room, from, 1));
    }

    /** From what sits on a pipe to the pipe; from all else the one before. */
    public static Selection up(Room room, Selection from) {
        return from.lead()
                .flatMap(lead -> pipe(room, lead))
                .map(run -> Selection.of(Part.run(run.id())))
                .orElseGet(() -> along(room, from, -1));
    }

    private static Selection stepped(List<Part> row, @Nullable Part lead, int way) {
        int at = row.indexOf(lead);
        int first = way > 0 ? 0 : row.size() - 1;
        return Selection.of(row.get(at < 0 ? first : Math.floorMod(at + way, row.size())));
    }

    private static List<Part> floor(Room room) {
        return Stream.of(Parts.onFloor(room), Parts.of(room, Part.Kind.DOOR), Parts.of(room, Part.Kind.WALL))
                .flatMap(List::stream)
                .toList();
    }

    /** The pipe that a thing sits on; empty for what is no such thing. */
    private static Optional<Run> pipe(Room room, Part part) {
        return switch (part.kind()) {
            case CORNER, FITTING -> Find.run(room, part.id());
            case TAP, GANG_TAP, FEED ->
                Places.seat(room, part)
                        .flatMap(seat -> Find.run(room, seat.run().text()));
            default -> Optional.empty();
        };
    }

    private static List<Part> on(Room room, Part lead) {
        return pipe(room, lead).map(run -> on(room, run)).orElse(List.of());
    }

    /** All that sits on a pipe, from its start to its end. */
    private static List<Part> on(Room room, Run run) {
        Stream<Stop> fittings = IntStream.range(0, run.fittings().size())
                .mapToObj(i -> new Stop(
                        Part.fitting(run.id(), i), run.fittings().get(i).atM()));
        Stream<Stop> seats = Stream.of(Part.Kind.TAP, Part.Kind.GANG_TAP, Part.Kind.FEED)
                .flatMap(kind -> Parts.of(room, kind).stream())
                .flatMap(part -> Places.seat(room, part)
                        .filter(seat -> seat.run().equals(run.id()))
                        .map(seat -> new Stop(part, seat.atM()))
                        .stream());
        return Stream.of(corners(run), fittings, seats)
                .flatMap(stops -> stops)
                .sorted(Comparator.comparingDouble(Stop::alongM))
                .map(Stop::part)
                .toList();
    }

    private static Stream<Stop> corners(Run run) {
        List<Point> points = run.points();
        double[] alongM = new double[points.size()];
        for (int i = 1; i < points.size(); i++) {
            alongM[i] = alongM[i - 1] + points.get(i - 1).distanceM(points.get(i));
        }
        return IntStream.range(0, points.size()).mapToObj(i -> new Stop(Part.corner(run.id(), i), alongM[i]));
    }
}
