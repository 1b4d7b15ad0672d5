package lungfish.standing;

/**
 * Two repairable machines of which one is enough: {@code λp = λ1 λ2 (r1 + r2)}, {@code rp = r1 r2/(r1 + r2)}; the
 * approximate formula of Billinton and Allan, Reliability Evaluation of Engineering Systems (from memory). It is the rare-event sum, and never below the steady state of the chain in
 * which each is mended on its own: that is the cautious side.
 *
 * @param ratePerS λp, how often both are down at once
 * @param mendS rp, how long that then lasts
 */
public record Parallel(double ratePerS, double mendS) {
    /** Of two failure rates and times to mend. */
    public static Parallel of(double rate1PerS, double mend1S, double rate2PerS, double mend2S) {
        return new Parallel(rate1PerS * rate2PerS * (mend1S + mend2S), mend1S * mend2S / (mend1S + mend2S));
    }

    /** The share of time in which both are down, at most 1. */
    public double downShare() {
        return Math.min(1, ratePerS * mendS);
    }
}
