package lungfish.choice;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.BlowerClass;
import lungfish.edit.BlowerEdits;
import lungfish.room.Blower;
import lungfish.room.Room;

/** Puts a class of blower into a room's places, as the bench does: into the open ones; into all, where all are named. */
final class BuiltRoom {
    private BuiltRoom() {}

    static Room of(Room room, BlowerClass kind) {
        List<Blower> planned = room.blowers(Blower.Role.PLANNED);
        if (planned.isEmpty()) {
            return BlowerEdits.choose(kind).of(room);
        }
        boolean all = planned.stream().allMatch(blower -> blower.machine().isPresent());
        return room.withBlowers(room.blowers().stream()
                .map(blower -> isOpen(blower, all) ? blower.withMachine(Optional.of(kind.id())) : blower)
                .toList());
    }

    private static boolean isOpen(Blower blower, boolean all) {
        return blower.role() == Blower.Role.PLANNED && (all || blower.machine().isEmpty());
    }
}
