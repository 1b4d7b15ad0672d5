package lungfish.edit;

import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import lungfish.quantity.Dimension;
import lungfish.room.Room;

/**
 * A number that a room may say, and that the plan assumes where it does not.
 *
 * @param label what it is called beside its field
 * @param now what the room says, in SI; empty where it says nothing, or several things that differ
 * @param says the room that says this instead; empty makes it unknown again
 */
public record OwnValue(
        String label,
        Dimension dimension,
        Function<Room, OptionalDouble> now,
        BiFunction<Room, OptionalDouble, Attempt> says) {

    /** The edit that says it; refused where a room cannot be like that. */
    public Attempt say(Room room, OptionalDouble si) {
        return says.apply(room, si);
    }

    /** A number of the whole room, within the limits that a room file keeps; the lower one may be excluded. */
    static OwnValue within(
            String label,
            Dimension dimension,
            Limits limits,
            Function<Room, OptionalDouble> now,
            BiFunction<Room, OptionalDouble, Room> change) {
        return new OwnValue(label, dimension, now, (room, si) -> {
            boolean isPossible = si.isEmpty() || limits.hold(si.getAsDouble());
            return isPossible
                    ? Edit.tried(room, done(label, si), before -> change.apply(before, si))
                    : limits.refused(label, si.getAsDouble(), dimension);
        });
    }

    /** The same of a number that must be said: it cannot become unknown. */
    static OwnValue needed(
            String label,
            Dimension dimension,
            Limits limits,
            Function<Room, OptionalDouble> now,
            BiFunction<Room, Double, Room> change) {
        return new OwnValue(label, dimension, now, (room, si) -> {
            if (si.isEmpty()) {
                return Refused.because(label + " cannot be left out.", "Type it as it stands on the label.");
            }
            return limits.hold(si.getAsDouble())
                    ? Edit.tried(room, done(label, si), before -> change.apply(before, si.getAsDouble()))
                    : limits.refusedAsNeeded(label, si.getAsDouble(), dimension);
        });
    }

    private static String done(String label, OptionalDouble si) {
        return (si.isPresent() ? "Set: " : "Unset: ") + Words.midSentence(label);
    }
}
