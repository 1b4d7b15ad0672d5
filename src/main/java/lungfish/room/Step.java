package lungfish.room;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * When a planned rack is to come: the steps of a growing room, one after the other. All racks of a step come together; the
 * step is called what the first of them says.
 *
 * @param said 1 to {@link #LAST}; absent: the next step, which is the first
 * @param name of the step, as the keeper says it: "in two years"
 */
public record Step(OptionalInt said, Optional<String> name) {
    /** No room is planned in more steps than this. */
    public static final int LAST = 20;

    /** Nothing is said of it. */
    public static final Step UNSAID = new Step(OptionalInt.empty(), Optional.empty());

    /** Its number, from 1. */
    public int number() {
        return said.orElse(1);
    }

    /** That step, under the same name; absent: the next one. */
    public Step numbered(OptionalInt that) {
        return new Step(that, name);
    }

    /** The same step under another name; absent: none. */
    public Step named(Optional<String> that) {
        return new Step(said, that);
    }
}
