package lungfish.backup;

/**
 * Peukert's law (1897, from memory) with the rated time in it, {@code t = H (C/(I H))^k}. The form without H, {@code C/I^k}, is common and
 * wrong: at its rated current a battery would not last its rated time.
 */
public final class Peukert {
    private Peukert() {}

    /**
     * Time that a full battery lasts.
     *
     * @param chargeC rated charge, coulomb
     * @param ratedS time over which it was rated
     * @param currentA drawn
     * @param exponent k, 1 where capacity does not depend on current
     * @return s
     */
    public static double timeS(double chargeC, double ratedS, double currentA, double exponent) {
        return ratedS * Math.pow(chargeC / (currentA * ratedS), exponent);
    }

    /**
     * Share of the rated charge that can be drawn when a steady load would empty all of it in a time. A load gentler
     * than the rated one is not credited with more than the rating: that is the cautious side.
     *
     * @param wholeS time to draw the whole rated charge
     * @return above 0 to 1
     */
    static double share(double wholeS, double ratedS, double exponent) {
        return wholeS >= ratedS ? 1 : timeS(wholeS, ratedS, 1, exponent) / wholeS;
    }
}
