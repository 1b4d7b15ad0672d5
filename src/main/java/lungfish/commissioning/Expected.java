package lungfish.commissioning;

/**
 * What an instrument should read.
 *
 * @param si in the unit of what is read
 * @param giveOrTake how far it may be off and all is well; 0 where only an end is given
 * @param end which side of it is well
 */
public record Expected(double si, double giveOrTake, End end) {
    /**
     * What a keeper's gauge may be off, Pa: half a division of a small dial, and what a zero that was not looked at adds.
     * Common practice, no source.
     */
    public static final double GAUGE_PA = 100;

    /** What a jar and a watch may be off: a second in twenty. Common practice, no source. */
    public static final double JAR_SHARE = 0.05;

    /** Which readings are well. */
    public enum End {
        /** Those near it. */
        NEAR,
        /** All below. */
        AT_MOST,
        /** All above. */
        AT_LEAST
    }

    static Expected near(double si, double giveOrTake) {
        return new Expected(si, giveOrTake, End.NEAR);
    }

    static Expected atMost(double si) {
        return new Expected(si, 0, End.AT_MOST);
    }

    static Expected atLeast(double si) {
        return new Expected(si, 0, End.AT_LEAST);
    }

    /**
     * Errors that do not know of each other add up by their squares, as uncertainties do (JCGM 100:2008, 5.1.2, where what is
     * read is their sum).
     */
    static double together(double... errors) {
        double squares = 0;
        for (double error : errors) {
            squares += error * error;
        }
        return Math.sqrt(squares);
    }

    /** The lowest reading that is well; minus infinity where any is. */
    public double lowest() {
        return end == End.AT_MOST ? Double.NEGATIVE_INFINITY : si - giveOrTake;
    }

    /** The highest reading that is well; infinity where any is. */
    public double highest() {
        return end == End.AT_LEAST ? Double.POSITIVE_INFINITY : si + giveOrTake;
    }
}
