package lungfish.room;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One device on one airline: one drop, one id.
 *
 * @param device a class of the catalogue, or one of the room's own
 * @param depthM of the air release below the water line
 * @param tap where its airline leaves the pipe; absent: the nearest point of the main
 */
public record Outlet(
        OutletId id,
        String device,
        Flow flow,
        OptionalDouble depthM,
        Optional<Airline> airline,
        Optional<Valve> valve,
        Optional<String> checkValve,
        Use use,
        Optional<Boolean> essential,
        Optional<Tap> tap) {
    /** What {@link #checkValve} says when there is none. */
    public static final String NO_CHECK_VALVE = "none";

    /**
     * The air it should have. At most one of target and turnover is given.
     *
     * @param turnoverPerS times in a second that the water of its tank should pass the device
     */
    public record Flow(
            OptionalDouble leastM3PerS,
            OptionalDouble targetM3PerS,
            OptionalDouble mostM3PerS,
            OptionalDouble turnoverPerS) {
        /** Nothing said: the class's typical flow is taken. */
        public static final Flow UNKNOWN = new Flow(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * Its tubing.
     *
     * @param size a class of the catalogue
     * @param lengthM absent: measured from the drawing
     */
    public record Airline(Optional<String> size, OptionalDouble lengthM) {}

    /**
     * The valve at its tap.
     *
     * @param kind a class of the catalogue
     * @param opening 0 shut to 1 open, as it is set today
     */
    public record Valve(String kind, OptionalDouble opening) {}

    /** When it runs. */
    public enum Use {
        ALWAYS,
        SOMETIMES
    }

    /** Where an airline leaves the pipe. */
    public sealed interface Tap permits OnRun, OnGang {}

    /** A tap of its own, at a distance along a run. */
    public record OnRun(RunId run, double atM) implements Tap {}

    /** One of several on a gang valve or a string of tees. */
    public record OnGang(GangId gang) implements Tap {}
}
