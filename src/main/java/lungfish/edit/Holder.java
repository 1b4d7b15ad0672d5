package lungfish.edit;

import static lungfish.edit.OwnValue.within;

import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import lungfish.quantity.Dimension;
import lungfish.room.Room;

/** A part of what the room says, that holds numbers which may be said or not. */
record Holder<P>(Function<Room, P> now, BiFunction<Room, P, Room> with) {
    OwnValue value(
            String label,
            Dimension dimension,
            Limits limits,
            Function<P, OptionalDouble> number,
            BiFunction<P, OptionalDouble, P> saying) {
        return within(
                label,
                dimension,
                limits,
                now.andThen(number),
                (room, si) -> with.apply(room, saying.apply(now.apply(room), si)));
    }
}
