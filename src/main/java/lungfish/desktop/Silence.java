package lungfish.desktop;

import java.util.OptionalDouble;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/**
 * What an empty field means.
 *
 * @param takenSi the number that the plan takes instead, where it takes one
 * @param words why, in a word or two
 */
record Silence(OptionalDouble takenSi, String words) {
    static final Silence NOTHING = of("");

    static Silence of(String words) {
        return new Silence(OptionalDouble.empty(), words);
    }

    /** As it stands in the field: "1.5 L/min, usual for the device". */
    String says(Quantities quantities, Dimension dimension) {
        return takenSi.isPresent() ? taken(quantities, dimension) + (words.isEmpty() ? "" : ", " + words) : words;
    }

    /** The number alone; empty where there is none. */
    String taken(Quantities quantities, Dimension dimension) {
        return takenSi.isPresent() ? quantities.show(takenSi.getAsDouble(), dimension) : "";
    }
}
