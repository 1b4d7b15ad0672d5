package lungfish.roomfile;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.catalogue.Catalogue;
import lungfish.json.JsonReader;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.room.Rack;
import lungfish.room.Room;

/**
 * Whether a room that was changed can still be filed and opened again. Racks hold nearly all of a room, and most changes
 * leave them alone: then their numbers, which are known to be sound, are not read through again.
 */
public final class RoomChange {
    private RoomChange() {}

    /**
     * What a file of the room after would be refused for; empty where it would be read.
     *
     * @param before a room whose file would be read
     */
    public static List<Problem> problems(Room before, Room after, Catalogue catalogue) {
        List<Rack> changed = after.racks().equals(before.racks()) ? List.of() : after.racks();
        return Stream.concat(numbers(after.withRacks(changed)).stream(), RoomChecks.problems(after, catalogue).stream())
                .distinct()
                .toList();
    }

    private static List<Problem> numbers(Room room) {
        try {
            Reading<Optional<Room>> read = JsonReader.read(RoomWriter.bytes(room), at -> at.object(RoomFormat::read));
            return read.problems();
        } catch (IllegalArgumentException e) {
            return List.of(new Problem("", String.valueOf(e.getMessage()), "numbers that are finite"));
        }
    }
}
