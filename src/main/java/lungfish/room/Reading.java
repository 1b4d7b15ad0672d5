package lungfish.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the keeper read, and when.
 *
 * @param shut what stood shut meanwhile, beyond what the room says
 * @param note free text
 */
public record Reading(ReadingId id, LocalDate on, Measured measured, Shut shut, Optional<String> note) {
    /** What a keeper can read. */
    public sealed interface Measured permits Jar, Gauge, Watts, Level, Fall {}

    /**
     * Seconds in which the air of an outlet filled an inverted jar.
     *
     * @param jarM3 absent: the keeper's usual jar
     */
    public record Jar(OutletId outlet, double s, OptionalDouble jarM3) implements Measured {}

    /**
     * A gauge on the pipe.
     *
     * @param at where; absent: at the blower
     */
    public record Gauge(Optional<Outlet.OnRun> at, double gaugePa) implements Measured {}

    /**
     * What a blower draws.
     *
     * @param blower absent: all of the planned ones together
     */
    public record Watts(Optional<BlowerId> blower, double watts) implements Measured {}

    /** The level at the listener. */
    public record Level(double dba) implements Measured {}

    /**
     * The fall of a gauge with the blowers off and every outlet and bleed shut: their check valves hold the pipe, so that
     * only leaks let the air out.
     *
     * @param fromPa gauge, when the watch was started
     * @param toPa gauge, when it was stopped
     */
    public record Fall(double fromPa, double toPa, double s) implements Measured {}

    /**
     * What stood shut while it was read.
     *
     * @param outlets at their valves
     * @param valves of the pipe, where they sit
     */
    public record Shut(List<OutletId> outlets, List<Outlet.OnRun> valves) {
        public static final Shut NOTHING = new Shut(List.of(), List.of());

        public Shut {
            outlets = List.copyOf(outlets);
            valves = List.copyOf(valves);
        }
    }
}
