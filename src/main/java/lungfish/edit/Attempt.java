package lungfish.edit;

import java.util.Optional;
import java.util.function.Function;

/** What came of asking for an edit: the edit, or why it cannot be done and how to mend it. */
public sealed interface Attempt permits Edit, Refused {
    /** Whichever it is. */
    <R> R match(Function<Edit, R> edit, Function<Refused, R> refused);

    /** The edit, where it can be done. */
    default Optional<Edit> edit() {
        return match(Optional::of, refused -> Optional.empty());
    }

    /** Why it cannot be done, where it cannot. */
    default Optional<Refused> refused() {
        return match(edit -> Optional.empty(), Optional::of);
    }
}
