package lungfish.network;

/**
 * How far a state is from the laws: of each element what its law misses in ψ, and what flow that is worth. An element
 * is met when either is down to rounding; flows that a step did not balance are counted apart.
 */
final class Misses {
    /** Share of the total flow that an element, or the balance of all nodes, may be off: 1000 times finer than promised. */
    private static final double FLOW_SHARE = 1e-12;

    /** What is left of ψ when doubles are subtracted, as a share of the p² at the element. */
    static final double PSI_ROUNDING = 1e-14;

    /** Share of p² beyond which no miss is let pass, whatever flow it is worth: about 5e-9 Pa at ambient. */
    private static final double PSI_MOST = 1e-13;

    /** A figure at which an answer still keeps what is promised with room to spare, should rounding stop it there. */
    private static final double GOOD = 10.0;

    /** The largest balance of a knot that is let pass, in the same measure: 1e-10 of the total. */
    private static final double BALANCED = 100.0;

    /** A total below which a network is still. */
    private static final double STILL_KG_PER_S = 1e-15;

    private double tiny;
    private double perKgPerS;
    private double worst;
    private double worstShare;
    private double unbalanced;

    /** Starts to count anew. */
    void reset(double totalKgPerS) {
        tiny = FLOW_SHARE * Math.max(totalKgPerS, STILL_KG_PER_S);
        perKgPerS = 1.0 / tiny;
        worst = 0.0;
        worstShare = 0.0;
        unbalanced = 0.0;
    }

    /** A flow that counts for nothing, kg/s. */
    double tinyFlow() {
        return tiny;
    }

    /**
     * Counts one element.
     *
     * @param psi what its law misses
     * @param conductance of its tangent
     * @param pi p² at its ends, the higher
     */
    void element(double psi, double conductance, double pi) {
        double size = Math.abs(psi);
        double worth = size * conductance * perKgPerS;
        if (!(worth <= worst)) {
            worst = Math.max(worst, Math.min(size / (pi * PSI_ROUNDING), worth));
        }
        if (!(size <= worstShare * pi)) {
            worstShare = size / pi;
        }
    }

    /** Counts a flow that the last step did not balance. */
    void flow(double kgPerS) {
        unbalanced += Math.abs(kgPerS);
    }

    /**
     * How far a tangent that is kept would be off, in the measure of {@link Quiet}: 1 is a third of what is let pass.
     *
     * @param psi the most that any law misses its tangent
     * @param kgPerS the most that such a miss is worth
     * @param pi p² at the element, at least
     */
    double ofTangent(double psi, double kgPerS, double pi) {
        return Math.max(kgPerS * perKgPerS, psi / (PSI_MOST * pi)) / KEPT;
    }

    private static final double KEPT = 1.0 / 3.0;

    /** All in one figure: met at 1 or below; NaN when arithmetic broke down. */
    double figure() {
        return Math.max(Math.max(worst, worstShare / PSI_MOST), unbalanced * perKgPerS);
    }

    /** Whether the largest balance of any knot keeps a tenfold distance from what is promised; most are at rounding. */
    boolean isBalanced(double largestKgPerS) {
        return largestKgPerS * perKgPerS <= BALANCED;
    }

    /** Whether a figure is as good as it gets: met, or good and no longer falling. */
    static boolean isMet(double figure, double before) {
        return figure <= 1.0 || (figure <= GOOD && figure > before / 2.0);
    }
}
