package lungfish.room;

import java.util.Optional;

/** A protected mains circuit: what hangs on it fails together. */
public record Circuit(
        CircuitId id, String name, Optional<Boolean> residualCurrentProtected, Optional<Boolean> feedsHeaters) {}
