package lungfish.edit;

import java.util.function.UnaryOperator;
import lungfish.room.Room;

/**
 * What a keeper does to a room.
 *
 * @param done its words, fit to follow "Undo": {@code "Choose linear piston blower, 80 L/min at 14 kPa"}
 * @param change from the room before to the room after; pure
 */
public record Edit(String done, UnaryOperator<Room> change) {
    /** The room after. Where nothing changes it equals the room before. */
    public Room of(Room before) {
        return change.apply(before);
    }
}
