package lungfish.growth;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lungfish.catalogue.BlowerClass;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Rack;
import lungfish.room.Room;

/** Rooms as they will be: with planned racks in place, and on a blower that is settled. */
final class Growing {
    private Growing() {}

    /** The room with some of its planned racks in place. */
    static Room with(Room room, Predicate<Rack> there) {
        return room.withRacks(room.racks().stream()
                .map(rack -> rack.isPlanned() && there.test(rack) ? rack.at(Rack.Stage.IN_PLACE) : rack)
                .toList());
    }

    /** The room with all its open places for a blower taken by a class; one is drawn where none is. */
    static Room settled(Room room, BlowerClass kind) {
        return blowers(room, blower -> blower.machine().isEmpty(), kind);
    }

    /** The room with all its planned blowers of this class. */
    static Room exchanged(Room room, BlowerClass kind) {
        return blowers(room, blower -> true, kind);
    }

    private static Room blowers(Room room, Predicate<Blower> which, BlowerClass kind) {
        List<Blower> all = drawn(room).blowers().stream()
                .map(blower -> blower.role() == Blower.Role.PLANNED && which.test(blower)
                        ? blower.withMachine(Optional.of(kind.id()))
                        : blower)
                .toList();
        return room.withBlowers(all);
    }

    /** The room with a planned blower at least. */
    private static Room drawn(Room room) {
        if (!room.blowers(Blower.Role.PLANNED).isEmpty()) {
            return room;
        }
        String id = "planned";
        while (isTaken(room, id)) {
            id = id + "-blower";
        }
        return room.withBlowers(Stream.concat(room.blowers().stream(), Stream.of(Blower.planned(new BlowerId(id))))
                .toList());
    }

    private static boolean isTaken(Room room, String id) {
        return room.blowers().stream().anyMatch(blower -> blower.id().text().equals(id));
    }
}
