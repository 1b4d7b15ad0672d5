package lungfish.catalogue;

import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.Given;
import lungfish.reason.Origin;
import lungfish.reason.PartId;

/**
 * A value that the plan takes where the room is silent.
 *
 * @param what in plain words
 * @param source published source, or "common practice, no source"
 */
public record AssumedValue(Assumable key, String what, double si, Dimension dimension, String source) {
    /** The value as an answer lists it among what it assumed. */
    public Assumption about(PartId where) {
        return new Assumption(key, where, what, si, dimension, source);
    }

    /** The value with its origin: assumed. */
    public Given given() {
        return new Given(si, Origin.assumed(key, source));
    }
}
