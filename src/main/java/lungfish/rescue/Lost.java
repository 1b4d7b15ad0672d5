package lungfish.rescue;

import lungfish.outage.Vessel;

/**
 * A tank that no set keeps from danger.
 *
 * @param dangerS when it is in danger with whatever keeps it longest, s after the failure
 */
public record Lost(Vessel vessel, Hazard hazard, Why why, double dangerS) {
    /** Why not. */
    public enum Why {
        /** Its air alone does not keep it, even while nothing fails. */
        SHORT_BEFORE,
        /** Whatever is added gives it too little air. */
        TOO_LITTLE,
        /** Whatever is added begins too late for it, or ends too soon. */
        NOT_IN_TIME
    }
}
