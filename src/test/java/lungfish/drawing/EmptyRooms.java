package lungfish.drawing;

import java.util.List;
import java.util.Optional;
import lungfish.room.Backup;
import lungfish.room.Room;

/** Rooms with nothing in them, for tests. */
final class EmptyRooms {
    private EmptyRooms() {}

    /** The walls of a room, and no more. */
    static Room like(Room room) {
        return new Room(
                "Empty",
                Optional.empty(),
                room.displayUnits(),
                room.shell(),
                room.climate(),
                room.supply(),
                room.wishes(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Backup.NONE,
                List.of(),
                room.ownClasses(),
                room.spreads());
    }
}
