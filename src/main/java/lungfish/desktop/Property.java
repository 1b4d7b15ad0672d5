package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import lungfish.edit.Attempt;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
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

    /**
     * A name, or a longer line of text.
     *
     * @param usual how such a line reads, told while it is empty; empty for a name
     */
    record Words(String label, String usual, Function<Room, Said<String>> now, BiFunction<Room, String, Attempt> say)
            implements Property {
        Words(String label, Function<Room, Said<String>> now, BiFunction<Room, String, Attempt> say) {
            this(label, "", now, say);
        }

        /** Whether it may be longer than a name. */
        boolean isLine() {
            return !usual.isEmpty();
        }
    }

    /**
     * What the plan takes where nothing is said.
     *
     * @param words what is told beside the number, in a word or two
     * @param otherwise what is told where there is no number; empty where something must be said
     * @param si the number itself, of each thing that is chosen
     */
    record Usual(String words, String otherwise, Function<Plan, Said<Double>> si) {
        static final Usual NONE = words("");

        static Usual words(String words) {
            return new Usual(words, words, plan -> new Said<>(List.of()));
        }

        /** A number that is the same for every room. */
        static Usual of(String words, double si) {
            return new Usual(words, words, plan -> new Said<>(List.of(Optional.of(si))));
        }

        /** What the plan lists among what it assumes, of all these parts alike. */
        static Usual assumed(Assumable key, List<PartId> where) {
            return new Usual(
                    "assumed",
                    "not said",
                    plan -> new Said<>(where.stream()
                            .map(part -> plan.assumptions().stream()
                                    .filter(each ->
                                            each.key() == key && each.where().equals(part))
                                    .findFirst()
                                    .map(Assumption::si))
                            .toList()));
        }
    }

    /** A quantity. */
    record Amount(
            String label,
            Dimension dimension,
            Usual usual,
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
