package lungfish.network;

/**
 * How far a state is from the laws: of each element what its law misses in ψ, and what flow that is worth. An element
 * is met when either is down to rounding; flows that a step did not balance are counted apart.
 */
final class Misses {
    /** Share of the total flow that an element, or the balance of all nodes, may be off: 1000 times finer than promised. */
    private static final double FLOW_SHARE = 1e-12;

    /** What is left of ψ when doubles are subtracted, as a share of the largest p². */
    static final double PSI_ROUNDING = 1e-14;

    /** Share of the largest p² beyond which no miss is let pass, whatever flow it is worth: about 5e-8 Pa at ambient. */
    private static final double PSI_MOST = 1e-12;

    /** A figure at which an answer still keeps what is promised with room to spare, should rounding stop it there. */
    private static final double GOOD = 50.0;

    private double perPsi;
    private double perKgPerS;
    private double worst;
    private double worstPsi;
    private double unbalanced;

    /** Starts to count anew. */
    void reset(double totalKgPerS, double largestPi) {
        perPsi = 1.0 / (PSI_ROUNDING * largestPi);
        perKgPerS = 1.0 / (FLOW_SHARE * Math.max(totalKgPerS, Double.MIN_NORMAL));
        worst = 0.0;
        worstPsi = 0.0;
        unbalanced = 0.0;
    }

    /** Counts one element: what its law misses, and its conductance. */
    void element(double psi, double conductance) {
        double size = Math.abs(psi);
        worst = Math.max(worst, size * Math.min(perPsi, conductance * perKgPerS));
        worstPsi = Math.max(worstPsi, size);
    }

    /** Counts a flow that the last step did not balance. */
    void flow(double kgPerS) {
        unbalanced += Math.abs(kgPerS);
    }

    /** All in one figure: met at 1 or below; NaN when arithmetic broke down. */
    double figure() {
        double most = PSI_ROUNDING / PSI_MOST;
        return Math.max(Math.max(worst, worstPsi * perPsi * most), unbalanced * perKgPerS);
    }

    /** Whether a figure is as good as it gets: met, or good and no longer falling. */
    static boolean isMet(double figure, double before) {
        return figure <= 1.0 || (figure <= GOOD && figure > before / 2.0);
    }
}
