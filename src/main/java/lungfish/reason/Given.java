package lungfish.reason;

import java.util.OptionalDouble;

/** A number that went into an answer, with its origin: typed in the room, or assumed visibly. */
public record Given(double si, Origin origin) {
    /** The typed value, or the assumed one where the room is silent. */
    public static Given typedOr(OptionalDouble typed, Given assumed) {
        return typed.isPresent() ? new Given(typed.getAsDouble(), Origin.typed("")) : assumed;
    }

    public boolean isAssumed() {
        return origin.kind() == Origin.Kind.ASSUMED;
    }
}
