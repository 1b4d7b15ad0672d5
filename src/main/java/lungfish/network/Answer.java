package lungfish.network;

import java.util.function.Function;

/** What the solver says: a {@link Solved} network (as set, or tuned), or the reason why there is no answer. */
public sealed interface Answer permits Solved, Refused {
    /** One function for each kind of answer. */
    <R> R match(Function<AsSet, R> asSet, Function<Tuned, R> tuned, Function<Refused, R> refused);
}
