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

    /** Another kind in its place. */
    public Stirrer as(Kind that) {
        return new Stirrer(id, tank, that, powerW, circuit);
    }

    /** The same, drawing so much, W; empty: unknown. */
    public Stirrer drawing(OptionalDouble that) {
        return new Stirrer(id, tank, kind, that, circuit);
    }

    /** The same on this circuit; empty: unknown. */
    public Stirrer on(Optional<CircuitId> that) {
        return new Stirrer(id, tank, kind, powerW, that);
    }
}
