package lungfish.oxygen;

/**
 * How carefully a tank is looked at. Fish of one mass differ by a factor of several, and so does the transfer at a surface: a
 * time to trouble is never one figure.
 */
public enum Case {
    /** The middle of what is published. */
    LIKELY,
    /** Every input at its bad end: for planning, not for forecasting. */
    CAUTIOUS
}
