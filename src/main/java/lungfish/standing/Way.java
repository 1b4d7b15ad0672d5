package lungfish.standing;

/** Ways to give a room its air. */
public enum Way {
    /** One blower for all. */
    ONE_BLOWER,
    /** A second one behind its check valve, which somebody starts. */
    STANDBY_BY_HAND,
    /** The same, started by a pressure switch. */
    STANDBY_BY_ITSELF,
    /** Several that run side by side and share the load: two halves. */
    SHARED,
    /** A small pump here and there, each for its own tanks. */
    SMALL_PUMPS
}
