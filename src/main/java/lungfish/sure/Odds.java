package lungfish.sure;

/**
 * In how many of some rooms like this something holds.
 *
 * @param holds of {@code of}
 * @param of 1 or more
 */
public record Odds(int holds, int of) {
    /** 95 of 100 such intervals hold the true odds: the standard normal deviate of 0.975. */
    private static final double Z = 1.959963984540054;

    private static final double NEARLY_ALL = 0.99;

    public double share() {
        return (double) holds / of;
    }

    /** The true odds are hardly lower: the lower end of E. B. Wilson's interval, J. Am. Stat. Assoc. 22, 1927, p. 209. */
    public double leastShare() {
        return Math.max(0, middle() - half());
    }

    /** The true odds are hardly higher. */
    public double mostShare() {
        return Math.min(1, middle() + half());
    }

    /** Whether so many were looked at, all or none of them, that hardly one room in a hundred is otherwise. */
    public boolean isCertain() {
        return holds == of ? leastShare() >= NEARLY_ALL : holds == 0 && mostShare() <= 1 - NEARLY_ALL;
    }

    private double middle() {
        return (share() + Z * Z / (2.0 * of)) / (1 + Z * Z / of);
    }

    private double half() {
        double variance = share() * (1 - share()) / of + Z * Z / (4.0 * of * of);
        return Z * Math.sqrt(variance) / (1 + Z * Z / of);
    }
}
