package lungfish.room;

import java.util.Optional;

/** A protected mains circuit: what hangs on it fails together. */
public record Circuit(
        CircuitId id, String name, Optional<Boolean> residualCurrentProtected, Optional<Boolean> feedsHeaters) {
    /** The same circuit under another name. */
    public Circuit named(String that) {
        return new Circuit(id, that, residualCurrentProtected, feedsHeaters);
    }

    /** The same circuit, with residual-current protection or without; empty: unknown. */
    public Circuit protectedBy(Optional<Boolean> that) {
        return new Circuit(id, name, that, feedsHeaters);
    }

    /** The same circuit, feeding heaters or not; empty: unknown. */
    public Circuit feedingHeaters(Optional<Boolean> that) {
        return new Circuit(id, name, residualCurrentProtected, that);
    }
}
