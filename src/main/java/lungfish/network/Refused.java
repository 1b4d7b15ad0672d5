package lungfish.network;

import java.util.function.Function;

/**
 * A network that cannot be solved, and never a wrong number in its place.
 *
 * @param why the kind of trouble
 * @param reason a plain sentence that names the part
 * @param partId id of the node, pipe, drop or source that it is about
 */
public record Refused(Why why, String reason, String partId) implements Answer {
    /** The kinds of trouble. */
    public enum Why {
        /** Drops in a piece of the network that has no source. */
        NO_SOURCE,
        /** No drop says how much it wants, so that there is nothing to tune. */
        NO_TARGET,
        /** Two fixed pressures on one node, or on nodes tied into one. */
        TWO_PRESSURES,
        /** A drop that would pass any flow at no cost. */
        NO_RESISTANCE,
        /** A blower whose curve never comes down to zero, with no drop to take its air. */
        NO_OUTLET,
        /** A pressure beyond anything that the model holds for. */
        BEYOND_MODEL,
        /** The steps came to their cap before the laws were met. */
        ITERATION_CAP
    }

    @Override
    public <R> R match(Function<AsSet, R> asSet, Function<Tuned, R> tuned, Function<Refused, R> refused) {
        return refused.apply(this);
    }
}
