package lungfish.edit;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import lungfish.room.Room;

/**
 * What a keeper does to a room.
 *
 * @param done its words, fit to follow "Undo": {@code "Choose linear piston blower, 80 L/min at 14 kPa"}
 * @param change from the room before to the room after; pure
 */
public record Edit(String done, UnaryOperator<Room> change) implements Attempt {
    /** The room after. Where nothing changes it equals the room before. */
    public Room of(Room before) {
        return change.apply(before);
    }

    /** The edit, if the room that it makes of this one is sound; otherwise what is in the way. */
    static Attempt tried(Room room, String done, UnaryOperator<Room> change) {
        Optional<Refused> trouble = Sound.trouble(room, change.apply(room));
        return trouble.isPresent() ? trouble.get() : new Edit(done, change);
    }

    @Override
    public <R> R match(Function<Edit, R> edit, Function<Refused, R> refused) {
        return edit.apply(this);
    }
}
