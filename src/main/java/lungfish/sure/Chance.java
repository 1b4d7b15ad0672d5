package lungfish.sure;

/**
 * The laws by which an input lies about what is said of it. A width is half the band in which eight of ten lie.
 *
 * <ul>
 *   <li>A depth is normal: an error of a ruler adds to it.
 *   <li>What is a matter of kind (resistance, fouling, wear, roughness, the air set at an outlet) is lognormal: twice as
 *       much is as likely as half as much, and nothing falls below zero. Its median is what is said.
 *   <li>What is made to a tolerance (a machine's air, a bore) is triangular about it: most lie near, none beyond.
 * </ul>
 *
 * Normal deviates are cut at four standard deviations, beyond which lies one in 16 000.
 */
final class Chance {
    /** The standard normal deviate that nine of ten lie below. */
    static final double Z90 = 1.2815515655446004;

    private static final double CUT = 4;

    /** Where nine of ten lie below in the upper half of a triangle of half width 1: the root of (1 - t)² = 0.2. */
    private static final double T90 = 1 - Math.sqrt(0.2);

    /** Of two equal parts that make up one spread. */
    private static final double HALF_OF_VARIANCE = Math.sqrt(0.5);

    private Chance() {}

    /** By how much a measure is off, in the unit of its width. */
    static double off(double width, double deviate) {
        return width / Z90 * deviate;
    }

    /** A factor of median 1; nine of ten lie below 1 + width, nine of ten above 1 / (1 + width). */
    static double factor(double width, double deviate) {
        return Math.exp(Math.log1p(width) / Z90 * deviate);
    }

    /** A factor about 1 that is never beyond a tolerance; nine of ten lie below 1 + width. */
    static double tolerance(double width, double share) {
        double triangle = share < 0.5 ? Math.sqrt(2 * share) - 1 : 1 - Math.sqrt(2 * (1 - share));
        return 1 + width / T90 * triangle;
    }

    /** One deviate from two, each of which makes up half of the variance. */
    static double both(double common, double own) {
        return HALF_OF_VARIANCE * (common + own);
    }

    /**
     * The standard normal deviate that a share of all lie below, to seven figures. M. J. Wichura, algorithm AS 241 (PPND7),
     * Applied Statistics 37(3), 1988, p. 477.
     *
     * @param share 0 to 1
     */
    static double deviate(double share) {
        double q = share - 0.5;
        if (Math.abs(q) <= 0.425) {
            double r = 0.180625 - q * q;
            return q
                    * (((59.109374720 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179)
                    / (((67.187563600 * r + 78.757757664) * r + 17.895169469) * r + 1);
        }
        double tail = Math.min(share, 1 - share);
        double z = tail > 0 ? tailDeviate(Math.sqrt(-Math.log(tail))) : CUT;
        return Math.copySign(Math.min(CUT, z), q);
    }

    /** Good to a root of 5, far beyond the cut. */
    private static double tailDeviate(double root) {
        double r = root - 1.6;
        return (((0.17023821103 * r + 1.3067284816) * r + 2.7568153900) * r + 1.4234372777)
                / ((0.12021132975 * r + 0.73700164250) * r + 1);
    }
}
