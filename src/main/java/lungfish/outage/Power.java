package lungfish.outage;

/** What drives the blowers. */
public enum Power {
    MAINS,
    BATTERY,
    GENERATOR,
    NONE
}
