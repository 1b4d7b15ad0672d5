package lungfish.room;

import java.util.Optional;
import java.util.OptionalDouble;

/** Something that stirs a tank without the air: it may go on when the blower stops. */
public record Stirrer(StirrerId id, TankId tank, Kind kind, OptionalDouble powerW, Optional<CircuitId> circuit) {
    /** The kinds of stirrer. */
    public enum Kind {
        HANG_ON_FILTER,
        POWERHEAD
    }
}
