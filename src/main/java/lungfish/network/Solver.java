package lungfish.network;

/**
 * Solves one network again and again: its shape is analysed once, its last answer is the next start.
 *
 * <p>Not for two threads at once; two solvers share nothing.
 */
public final class Solver {
    private Network network;

    private Solver(Network network) {
        this.network = network;
    }

    /** A solver for this network, its shape analysed when first asked. */
    public static Solver of(Network network) {
        return new Solver(network);
    }

    /** The network as it stands now. */
    public Network network() {
        return network;
    }

    /**
     * Takes other numbers: valves, targets, depths, pipes, curves, conditions. Where nodes, ends, taps and source
     * places are the same, the analysis is kept and the last answer stays as the next start.
     */
    public void use(Network changed) {
        network = changed;
    }

    /** The network as its valves are set: {@link AsSet} or {@link Refused}. */
    public Answer asSet() {
        return Reasons.cap(0, "");
    }

    /**
     * The network with other settings of the tap valves, 1/m⁴, in the order of its drops: {@link AsSet} or
     * {@link Refused}. The settings stay.
     */
    public Answer asSet(double[] valveK) {
        return Reasons.cap(0, "");
    }

    /** The network with every drop throttled to its target: {@link Tuned} or {@link Refused}. */
    public Answer tuned() {
        return Reasons.cap(0, "");
    }
}
