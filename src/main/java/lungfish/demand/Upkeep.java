package lungfish.demand;

/** The state of the devices: fresh from cleaning, or due for it. Headline answers take the second. */
public enum Upkeep {
    CLEAN,
    DUE
}
