package lungfish.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Solves one network again and again: its shape is analysed once, its last answer is the next start.
 *
 * <p>Every answer carries its residuals ({@link Solved#quality()}); what cannot be solved is {@link Refused} with the
 * part named. How it works: {@link AsSetSolve} and {@link TunedSolve}.
 *
 * <p>Not for two threads at once; two solvers share nothing, and answers may go anywhere.
 */
public final class Solver {
    private Network network;
    private Shape shape;
    private Knots knots;
    private Finish finish;
    private @Nullable AsSetSolve asSet;
    private @Nullable TunedSolve tuned;

    private Solver(Network network) {
        this.network = network;
        shape = Shape.of(network);
        knots = Knots.of(shape);
        finish = new Finish(shape, knots);
    }

    /** A solver for this network. */
    public static Solver of(Network network) {
        return new Solver(network);
    }

    /** The network as it stands now. */
    public Network network() {
        return network;
    }

    /**
     * Takes other numbers: valves, targets, depths, pipes, curves, conditions. Where nodes, ends, taps, ties and the
     * places and kinds of sources are the same, the analysis is kept and the last answer stays as the next start; any
     * other network is analysed anew.
     */
    public void use(Network changed) {
        network = changed;
        Shape changedShape = Shape.of(changed);
        if (changedShape.isSameAs(shape)) {
            takeNumbers();
        } else {
            shape = changedShape;
            knots = Knots.of(shape);
            finish = new Finish(shape, knots);
            asSet = null;
            tuned = null;
        }
    }

    private void takeNumbers() {
        if (asSet != null) {
            asSet.take(network);
        }
        if (tuned != null) {
            tuned.take(network);
        }
    }

    /** The network as its valves are set: {@link AsSet} or {@link Refused}. */
    public Answer asSet() {
        AsSetSolve solve = asSetSolve();
        Refused refused = solve.solve();
        if (refused != null) {
            return refused;
        }
        double ambientPa = network.conditions().ambientPa();
        Flows.Numbers numbers =
                finish.numbers(ambientPa, solve.psi, solve.pipeFlow(), solve.dropFlow(), solve.sourceFlow());
        return new AsSet(new Flows(network, shape, solve.steps(), numbers, false));
    }

    /**
     * The network with other settings of the tap valves: {@link AsSet} or {@link Refused}. The settings stay.
     *
     * @param valveK 1/m⁴, in the order of the drops
     */
    public Answer asSet(double[] valveK) {
        List<Drop> turned = new ArrayList<>(valveK.length);
        for (int i = 0; i < valveK.length; i++) {
            turned.add(network.drops().get(i).withValveK(valveK[i]));
        }
        use(network.withDrops(turned));
        return asSet();
    }

    /** The network with every drop throttled to its target: {@link Tuned} or {@link Refused}. */
    public Answer tuned() {
        TunedSolve solve = tuned == null ? new TunedSolve(network, shape, knots) : tuned;
        tuned = solve;
        Refused refused = solve.solve();
        if (refused != null) {
            return refused;
        }
        double[] unknown = new double[shape.sources()];
        Arrays.fill(unknown, Double.NaN);
        double ambientPa = network.conditions().ambientPa();
        Flows.Numbers numbers = finish.numbers(ambientPa, solve.psi, solve.pipeFlow(), solve.target, unknown);
        return new Tuned(new Flows(network, shape, solve.steps(), numbers, true), solve.tuning());
    }

    /** Forgets the last answer, so that the next solve starts cold. */
    public void forget() {
        asSetSolve().forget();
    }

    /** The solve itself, for those who time it. */
    AsSetSolve asSetSolve() {
        AsSetSolve solve = asSet == null ? new AsSetSolve(network, shape, knots, Laws.TABLED) : asSet;
        asSet = solve;
        return solve;
    }
}
