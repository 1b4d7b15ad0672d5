package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import lungfish.edit.Attempt;
import lungfish.quantity.Dimension;
import lungfish.room.Room;

/** Something that is said of what is chosen, and can be said otherwise. Where several things differ it is mixed. */
sealed interface Property {
    String label();

    /** What is said now, of each thing that is chosen. */
    record Said<T>(List<Optional<T>> each) {
        /** What all of them have; empty where nothing is said, or where they differ. */
        Optional<T> common() {
            return isMixed() || each.isEmpty() ? Optional.empty() : each.get(0);
        }

        boolean isMixed() {
            return each.stream().distinct().count() > 1;
        }
    }

    /** A name. */
    record Words(String label, Function<Room, Said<String>> now, BiFunction<Room, String, Attempt> say)
            implements Property {}

    /**
     * A quantity.
     *
     * @param usual what the plan takes where nothing is said, in a word or two; empty where something must be said
     */
    record Amount(
            String label,
            Dimension dimension,
            String usual,
            Function<Room, Said<Double>> now,
            BiFunction<Room, OptionalDouble, Attempt> say)
            implements Property {}

    /** One of several. An empty choice, where there is one, says nothing. */
    record OneOf<T>(
            String label,
            List<Optional<T>> choices,
            Function<Optional<T>, String> name,
            Function<Room, Said<T>> now,
            BiFunction<Room, Optional<T>, Attempt> say)
            implements Property {}
}
