package lungfish.rescue;

/** What a room should live through. */
public enum Hazard {
    /** The mains are away for the wanted time. */
    MAINS,
    /** A blower stands still until somebody has noticed and it is mended; each blower of the room in its turn. */
    BLOWER
}
