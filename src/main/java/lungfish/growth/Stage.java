package lungfish.growth;

import java.util.List;
import java.util.Optional;
import lungfish.headroom.Headroom;
import lungfish.reason.Finding;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;

/**
 * The room at one step of its growth: all racks of that step and of those before it in place.
 *
 * @param room as it is then, its blower settled
 * @param outlets in place by then
 * @param findings that the room has then and has not now
 */
public record Stage(When when, Room room, int outlets, Needed needed, Standing standing, List<Finding> findings) {
    public Stage {
        findings = List.copyOf(findings);
    }

    /**
     * Which step it is.
     *
     * @param number of the step; 0 is now
     * @param name as the keeper calls it
     * @param added the planned racks that come with it, in the order drawn
     */
    public record When(int number, Optional<String> name, List<RackId> added) {
        public When {
            added = List.copyOf(added);
        }

        public boolean isNow() {
            return number == 0;
        }
    }

    /**
     * How the blower of now stands then.
     *
     * @param blower judged then
     * @param breaks what stops it: the gravest limit broken; the reserve is none, it is there to be grown into
     * @param headroom left then
     * @param repair what would mend it; absent where nothing breaks
     */
    public record Standing(
            Candidate blower, Optional<Limit.Broken> breaks, Headroom headroom, Optional<Repair> repair) {}

    /** How a stage stands. */
    public enum State {
        FITS,
        /** It fits, with less room to grow than is wished for. */
        TIGHT,
        BREAKS
    }

    public State state() {
        if (standing.breaks().isPresent()) {
            return State.BREAKS;
        }
        boolean lacks = standing.blower().broken().stream().anyMatch(broken -> broken.limit() == Limit.RESERVE);
        return lacks ? State.TIGHT : State.FITS;
    }
}
