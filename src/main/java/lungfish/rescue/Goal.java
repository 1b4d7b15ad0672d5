package lungfish.rescue;

/** Which tanks should never come down to the danger level, by the cautious figure. */
public enum Goal {
    ALL,
    /** Those with an outlet that is to be kept going. */
    ESSENTIAL
}
