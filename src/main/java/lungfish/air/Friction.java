package lungfish.air;

/**
 * Darcy friction factor in every flow regime: S. W. Churchill, "Friction-factor equation spans all fluid-flow regimes",
 * Chemical Engineering 84(24), 1977, p. 91.
 *
 * <p>{@code f = 8 [(8/Re)^12 + (A+B)^-1.5]^(1/12)}, {@code A = [2.457 ln(1/((7/Re)^0.9 + 0.27 ε/D))]^16},
 * {@code B = (37530/Re)^16}. Multiplied by Re this is {@code 8 [8^12 + Re^12 (A+B)^-1.5]^(1/12)}, which stays finite at
 * rest and is what a solver wants. The second term is below the last digit of a double under Re 800, so slow air (most
 * airlines) costs nothing: the product is 64 there. Powers are taken by squaring and roots, because this stands in the
 * innermost loop of the network.
 */
public final class Friction {
    /** The product f·Re in laminar flow (Hagen–Poiseuille). */
    public static final double LAMINAR_DARCY_TIMES_RE = 64.0;

    /** Below this Reynolds number the turbulent term is smaller than the last digit of 64 in double precision. */
    private static final double EXACTLY_LAMINAR_RE = 800.0;

    private static final double EIGHT_TO_12 = 68_719_476_736.0;
    private static final double LOG_FACTOR = 2.457;
    private static final double LOG_EXPONENT = 0.9;
    private static final double LOG_RE = 7.0;
    private static final double ROUGHNESS_FACTOR = 0.27;
    private static final double TRANSITION_RE = 37530.0;
    private static final double SERIES_BELOW = 0.01;

    private Friction() {}

    /**
     * Darcy friction factor.
     *
     * @param re Reynolds number, above 0
     * @param relativeRoughness ε/D, 0 to 0.05
     * @return dimensionless; 64/Re below Re 800; above Re 4000 within 2 % of Colebrook for ε/D up to 0.001
     *     and within 3.2 % up to 0.05 (tested); infinite at rest
     */
    public static double darcy(double re, double relativeRoughness) {
        return darcyTimesRe(re, relativeRoughness) / re;
    }

    /**
     * Darcy friction factor times the Reynolds number.
     *
     * @param re Reynolds number, 0 or above
     * @param relativeRoughness ε/D, 0 to 0.05
     * @return dimensionless; 64 at rest
     */
    public static double darcyTimesRe(double re, double relativeRoughness) {
        if (re < EXACTLY_LAMINAR_RE) {
            return LAMINAR_DARCY_TIMES_RE;
        }
        double sum = to16(LOG_FACTOR * logTerm(re, relativeRoughness)) + to16(TRANSITION_RE / re);
        return blend(re, sum, turbulentShare(re, sum));
    }

    /**
     * Darcy friction factor times the Reynolds number, with its slope, in one evaluation and without allocation.
     *
     * @param re Reynolds number, 0 or above
     * @param relativeRoughness ε/D, 0 to 0.05
     * @param valueAndSlope takes f·Re at [0] and d(f·Re)/dRe at [1]
     */
    public static void darcyTimesRe(double re, double relativeRoughness, double[] valueAndSlope) {
        if (re < EXACTLY_LAMINAR_RE) {
            valueAndSlope[0] = LAMINAR_DARCY_TIMES_RE;
            valueAndSlope[1] = 0.0;
            return;
        }
        double smooth = smoothTerm(re);
        double whole = smooth + ROUGHNESS_FACTOR * relativeRoughness;
        double log = -Math.log(whole);
        double a = to16(LOG_FACTOR * log);
        double b = to16(TRANSITION_RE / re);
        double sum = a + b;
        double share = turbulentShare(re, sum);
        double value = blend(re, sum, share);
        // d ln(A+B) / d ln Re, from dA = 16 A (0.9 smooth/whole) / log and dB = -16 B
        double sumExponent = 16.0 * (a * LOG_EXPONENT * smooth / (whole * log) - b) / sum;
        double exponent = share / (1.0 + share) * (1.0 - 0.125 * sumExponent);
        valueAndSlope[0] = value;
        valueAndSlope[1] = exponent * value / re;
    }

    /** Re^12 (A+B)^-1.5 over 8^12: what the turbulent term is of the laminar one. */
    private static double turbulentShare(double re, double sum) {
        return to12(re) / (EIGHT_TO_12 * sum * Math.sqrt(sum));
    }

    /** 8 [8^12 + Re^12 (A+B)^-1.5]^(1/12), by roots and a short series where one of the terms is far the smaller. */
    private static double blend(double re, double sum, double share) {
        if (share >= 1.0 / SERIES_BELOW) {
            return 8.0 * re / Math.sqrt(Math.sqrt(Math.sqrt(sum))) * twelfthRootOfOneAnd(1.0 / share);
        }
        return LAMINAR_DARCY_TIMES_RE
                * (share <= SERIES_BELOW ? twelfthRootOfOneAnd(share) : Math.pow(1.0 + share, 1.0 / 12.0));
    }

    /** Binomial series of (1 + x)^(1/12); for x up to 0.01 what is cut off is below the last digit. */
    private static double twelfthRootOfOneAnd(double x) {
        double tail = 1.0 - x * 35.0 / 48.0 * (1.0 - x * 47.0 / 60.0 * (1.0 - x * 59.0 / 72.0));
        return 1.0 + x / 12.0 * (1.0 - x * 11.0 / 24.0 * (1.0 - x * 23.0 / 36.0 * tail));
    }

    private static double logTerm(double re, double relativeRoughness) {
        if (relativeRoughness == 0.0) {
            return LOG_EXPONENT * Math.log(re / LOG_RE);
        }
        return -Math.log(smoothTerm(re) + ROUGHNESS_FACTOR * relativeRoughness);
    }

    private static double smoothTerm(double re) {
        return Math.pow(LOG_RE / re, LOG_EXPONENT);
    }

    private static double to12(double x) {
        double to4 = x * x * (x * x);
        return to4 * to4 * to4;
    }

    private static double to16(double x) {
        double to4 = x * x * (x * x);
        double to8 = to4 * to4;
        return to8 * to8;
    }
}
