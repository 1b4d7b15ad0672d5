package lungfish.measured;

/** What can be said of what happened to the room. */
public enum Verdict {
    /** One culprit is {@link #SURE} or surer. */
    LIKELY,
    /** Nothing happened, most probably, and no single culprit is left that is worth a thought. */
    NOTHING_WRONG,
    CANNOT_TELL,
    /** The readings do not go together, whatever happened. */
    CONTRADICTION;

    /** From this probability a culprit is named. */
    public static final double SURE = 0.95;

    /** Below this an outlet is not worth a thought. */
    static final double UNLIKELY = 0.05;

    /** Below this a leak, or a blower that fails early, is not worth a thought: each touches the whole room. */
    static final double RULED_OUT = 0.015;

    /** With less of the air that it was set to, an outlet is not well, whatever the reason. Common practice, no source. */
    static final double STARVES = 0.6;
}
