package lungfish.standing;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/** The usual formulas of repairable machines in steady state; Trivedi, Probability and Statistics with Reliability, ch. 6 (from memory). */
public final class Availability {
    /** A year of 365 days, s: 8760 h, as usual in the field. */
    public static final double YEAR_S = 365 * 24 * 3600.0;

    private Availability() {}

    /** {@code A = MTBF/(MTBF + MTTR)}: the share of time that a machine runs. Exact, whatever the spread of both times. */
    public static double of(double mtbfS, double mttrS) {
        return mtbfS / (mtbfS + mttrS);
    }

    /**
     * {@code Σ C(n,i) A^i (1−A)^(n−i)} from k to n: at least k of n alike are there. Exact where each fails and is mended
     * without regard to the others.
     */
    public static double kOutOfN(int k, int n, double each) {
        return 1 - new BinomialDistribution(n, each).cumulativeProbability(k - 1);
    }

    /** {@code e^(−λt)}: the chance of no failure in a time, at a steady rate. */
    public static double reliability(double ratePerS, double forS) {
        return Math.exp(-ratePerS * forS);
    }
}
