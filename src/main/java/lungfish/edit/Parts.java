package lungfish.edit;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.room.Blower;
import lungfish.room.Gang;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** All things of a room, kind by kind, in the order in which the keys walk them. */
final class Parts {
    private Parts() {}

    /** What stands on the floor or hangs above it: racks, pipes, gangs, machines, the listener. */
    static List<Part> onFloor(Room room) {
        return Stream.of(Part.Kind.RACK, Part.Kind.RUN, Part.Kind.GANG, Part.Kind.BLOWER, Part.Kind.LISTENER)
                .flatMap(kind -> of(room, kind).stream())
                .toList();
    }

    static List<Part> of(Room room, Part.Kind kind) {
        return switch (kind) {
            case RACK -> room.racks().stream().map(Rack::id).map(Part::rack).toList();
            case SHELF -> Find.shelves(room).map(Shelf::id).map(Part::shelf).toList();
            case TANK -> Find.tanks(room).map(Tank::id).map(Part::tank).toList();
            case OUTLET -> Find.outlets(room).map(Outlet::id).map(Part::outlet).toList();
            case TAP -> Find.outlets(room).map(Outlet::id).map(Part::tap).toList();
            case RUN -> room.runs().stream().map(Run::id).map(Part::run).toList();
            case CORNER -> room.runs().stream().flatMap(Parts::corners).toList();
            case FITTING -> room.runs().stream().flatMap(Parts::fittings).toList();
            case GANG -> room.gangs().stream().map(Gang::id).map(Part::gang).toList();
            case GANG_TAP ->
                room.gangs().stream().map(Gang::id).map(Part::gangTap).toList();
            case BLOWER ->
                room.blowers().stream().map(Blower::id).map(Part::blower).toList();
            case FEED -> room.blowers().stream().map(Blower::id).map(Part::feed).toList();
            case LISTENER ->
                room.listener().stream().map(listener -> Part.listener()).toList();
            case DOOR ->
                IntStream.range(0, room.shell().doors().size())
                        .mapToObj(Part::door)
                        .toList();
            case WALL ->
                IntStream.range(0, room.shell().walls().size())
                        .mapToObj(Part::wall)
                        .toList();
        };
    }

    private static Stream<Part> corners(Run run) {
        return IntStream.range(0, run.points().size()).mapToObj(i -> Part.corner(run.id(), i));
    }

    private static Stream<Part> fittings(Run run) {
        return IntStream.range(0, run.fittings().size()).mapToObj(i -> Part.fitting(run.id(), i));
    }
}
