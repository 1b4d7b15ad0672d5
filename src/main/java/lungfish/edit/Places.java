package lungfish.edit;

import java.util.Optional;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Listener;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shell;

/** Where the things of a room are on the floor, seen from above. */
public final class Places {
    private Places() {}

    /** What a thing takes of the floor, nothing wide where it is a point; empty for what has no place, or is not there. */
    public static Optional<Box> of(Room room, Part part) {
        return switch (part.kind()) {
            case RACK -> Find.rack(room, part.id()).map(Box::of);
            case SHELF, TANK, OUTLET -> Selecting.rackOf(room, part).map(Box::of);
            case RUN -> Find.run(room, part.id()).filter(Sound::isLine).map(Places::of);
            case DOOR -> at(room.shell().doors(), part.number()).map(door -> WallMoves.gap(door, room.shell()));
            case WALL -> at(room.shell().walls(), part.number()).map(Places::of);
            default -> point(room, part).map(Places::of);
        };
    }

    private static Box of(Run run) {
        return Box.around(run.points().stream().map(Places::of).toList());
    }

    private static Box of(Shell.Wall wall) {
        return Box.between(wall.fromXM(), wall.fromYM(), wall.toXM(), wall.toYM());
    }

    private static Box of(Point point) {
        return new Box(point.xM(), point.yM(), point.xM(), point.yM());
    }

    /** Where a thing is that is but a point. */
    public static Optional<Point> point(Room room, Part part) {
        return switch (part.kind()) {
            case CORNER -> Find.run(room, part.id()).flatMap(run -> at(run.points(), part.number()));
            case FITTING ->
                Find.run(room, part.id()).filter(Sound::isLine).flatMap(run -> at(run.fittings(), part.number())
                        .map(fitting -> run.at(fitting.atM())));
            case TAP, GANG_TAP, FEED -> seat(room, part).flatMap(seat -> Seats.place(room, seat));
            case GANG -> Find.gang(room, part.id()).map(Gang::place);
            case BLOWER ->
                Find.blower(room, part.id()).flatMap(blower -> blower.siting().place());
            case LISTENER -> room.listener().map(Listener::place);
            default -> Optional.empty();
        };
    }

    /** Where a tap or a joint sits on the pipe: where it was put, or at the nearest point; empty on a gang, and without pipe. */
    public static Optional<Outlet.OnRun> seat(Room room, Part part) {
        return switch (part.kind()) {
            case TAP ->
                room.seats().stream()
                        .filter(seat -> seat.outlet().id().text().equals(part.id()))
                        .findFirst()
                        .flatMap(seat -> Seats.of(room, seat));
            case GANG_TAP ->
                Find.gang(room, part.id()).flatMap(gang -> gang.tap().or(() -> Seats.nearest(room, gang.place())));
            case FEED -> Find.blower(room, part.id()).flatMap(blower -> feed(room, blower));
            default -> Optional.empty();
        };
    }

    private static Optional<Outlet.OnRun> feed(Room room, Blower blower) {
        return blower.feeds().or(() -> blower.siting().place().flatMap(place -> Seats.nearest(room, place)));
    }

    private static <T> Optional<T> at(java.util.List<T> all, int number) {
        return number >= 0 && number < all.size() ? Optional.of(all.get(number)) : Optional.empty();
    }
}
