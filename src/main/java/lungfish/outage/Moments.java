package lungfish.outage;

import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;

/**
 * When something is switched in an outage, s; never is infinite.
 *
 * @param what fails
 * @param stopped blowers that stand still because of it, until it is mended
 * @param mainsOff whether it takes the power of all blowers, so that batteries and a generator count
 * @param shedS when the air is cut down to the essential outlets
 * @param generatorS when the generator carries the room
 * @param standbyS when the standby runs
 * @param pumpsS when the battery pumps run
 * @param backS when all is well again
 */
record Moments(
        Failing what,
        Set<BlowerId> stopped,
        boolean mainsOff,
        double shedS,
        double generatorS,
        double standbyS,
        double pumpsS,
        double backS) {
    static final double NEVER = Double.POSITIVE_INFINITY;

    /** Whether the blowers get no power from the mains at a time. */
    boolean isMainsOff(double now) {
        return mainsOff && now < backS;
    }

    /** Whether nothing at all gets power from the mains at a time. */
    boolean isSupplyOff(double now) {
        return what.kind() == Failing.Kind.MAINS && now < backS;
    }

    /** The circuit that is off at a time. */
    Optional<CircuitId> tripped(double now) {
        return what instanceof Failing.CircuitTrips trips && now < backS
                ? Optional.of(trips.circuit())
                : Optional.empty();
    }

    double nextAfter(double now) {
        return DoubleStream.of(shedS, generatorS, standbyS, pumpsS, backS)
                .filter(at -> at > now)
                .min()
                .orElse(NEVER);
    }

    /** What runs at a time. */
    State state(double now, Power power, boolean pumpsCan) {
        if (now >= backS) {
            return State.WELL;
        }
        boolean powered = power != Power.NONE;
        return new State(
                powered,
                power == Power.BATTERY && now >= shedS,
                stopped,
                powered && now >= standbyS,
                pumpsCan && now >= pumpsS && (!powered || !stopped.isEmpty()),
                isOfPipe() ? Optional.of(what) : Optional.empty());
    }

    private boolean isOfPipe() {
        return !mainsOff && stopped.isEmpty();
    }
}
