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

    /** Whether it runs only now and then: a hatchery that is off most of the year. */
    public boolean isSometimes() {
        return use == Use.SOMETIMES;
    }

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

    /** The same outlet with another device. */
    public Outlet withDevice(String that) {
        return new Outlet(id, that, flow, depthM, airline, valve, checkValve, use, essential, tap);
    }

    /** The same outlet, asked for other air. */
    public Outlet withFlow(Flow that) {
        return new Outlet(id, device, that, depthM, airline, valve, checkValve, use, essential, tap);
    }

    /** The same outlet with its air release that deep; absent: unknown. */
    public Outlet withDepthM(OptionalDouble that) {
        return new Outlet(id, device, flow, that, airline, valve, checkValve, use, essential, tap);
    }

    /** The same outlet on other tubing. */
    public Outlet withAirline(Optional<Airline> that) {
        return new Outlet(id, device, flow, depthM, that, valve, checkValve, use, essential, tap);
    }

    /** The same outlet behind another valve. */
    public Outlet withValve(Optional<Valve> that) {
        return new Outlet(id, device, flow, depthM, airline, that, checkValve, use, essential, tap);
    }

    /** The same outlet with another check valve, or {@link #NO_CHECK_VALVE}; absent: unknown. */
    public Outlet withCheckValve(Optional<String> that) {
        return new Outlet(id, device, flow, depthM, airline, valve, that, use, essential, tap);
    }

    /** The same outlet, on at other times. */
    public Outlet used(Use that) {
        return new Outlet(id, device, flow, depthM, airline, valve, checkValve, that, essential, tap);
    }

    /** The same outlet, to be kept going when the air is cut down, or not; absent: unknown. */
    public Outlet withEssential(Optional<Boolean> that) {
        return new Outlet(id, device, flow, depthM, airline, valve, checkValve, use, that, tap);
    }

    /** The same outlet, leaving the pipe elsewhere; absent: at the nearest point. */
    public Outlet tappedAt(Optional<Tap> that) {
        return new Outlet(id, device, flow, depthM, airline, valve, checkValve, use, essential, that);
    }
}
