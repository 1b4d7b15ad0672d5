package lungfish.outage;

import java.util.Optional;
import java.util.Set;
import lungfish.room.BlowerId;

/**
 * What runs and what does not.
 *
 * @param powered whether the blowers have power
 * @param essentialsOnly whether the air is cut down to the essential outlets
 * @param stopped blowers of which a machine stands still
 * @param standby whether the standby runs
 * @param batteryPumps whether the small pumps with batteries of their own run
 * @param broken what is broken in the pipe; empty where nothing is
 */
public record State(
        boolean powered,
        boolean essentialsOnly,
        Set<BlowerId> stopped,
        boolean standby,
        boolean batteryPumps,
        Optional<Failing> broken) {
    /** All is well. */
    public static final State WELL = new State(true, false, Set.of(), false, false, Optional.empty());

    public State {
        stopped = Set.copyOf(stopped);
    }

    /** The same without the pumps that have batteries of their own. */
    State withoutBatteryPumps() {
        return batteryPumps ? new State(powered, essentialsOnly, stopped, standby, false, broken) : this;
    }
}
