package lungfish.network;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Solves a network with every drop throttled to its target.
 *
 * <p>The flows of the drops are known, all sources stand at one pressure, and so only the pipes are to be solved: the
 * same condensed Newton step as in {@link AsSetSolve}, with the targets as constant outflows. Without the acceleration
 * term the fall of ψ from the sources to a tap does not depend on the pressure of the sources, so that one solve gives
 * every fall; the sources must then stand at the greatest sum of a fall and of what the drop below it needs with its
 * valve fully open. With the acceleration term the two are repeated until they agree.
 *
 * <p>A drop without a target (or with a target of nothing) takes no air and asks for no pressure.
 */
final class TunedSolve implements Walk.Elements {
    /** No air behaves as an ideal gas in a pipe at such a pressure, Pa: 100 atmospheres. */
    static final double MOST_PA = 1e7;

    /** Falls of ψ found from so far below that taps near ambient lose digits: solved again where they really stand. */
    private static final double COARSE_OVER_AMBIENT = 100.0;

    private static final int PRESSURE_ROUNDS = 100;

    private final Shape shape;
    private final Knots knots;
    private final Frame frame;
    private final PipeWork pipes;
    private final Walk walk;
    private final Misses misses = new Misses();
    private final Moved moved = new Moved();
    private final double[] balance;

    /** ψ of each knot, Pa². */
    final double[] psi;

    /** Targets, kg/s. */
    final double[] target;

    private Network network;
    private DropLaws drops;
    private double ambientPi;
    private int index;

    TunedSolve(Network network, Shape shape, Knots knots) {
        this.network = network;
        this.shape = shape;
        this.knots = knots;
        boolean[] held = new boolean[knots.count];
        for (int knot = 0; knot < held.length; knot++) {
            held[knot] = !knots.isFed(knot);
        }
        for (int node : shape.sourceNode) {
            held[knots.ofNode[node]] = true;
        }
        frame = new Frame(shape, knots, held);
        psi = new double[knots.count];
        balance = new double[knots.count];
        target = new double[shape.drops()];
        pipes = new PipeWork(frame, network, Laws.TABLED);
        drops = new DropLaws(network.conditions(), network.drops(), Laws.TABLED);
        walk = new Walk(this, new Descent(frame, pipes, (anyPsi, counted) -> loadTargets(), psi));
        take(network);
    }

    /** Takes the numbers of a network of the same shape. */
    void take(Network changed) {
        network = changed;
        Conditions conditions = changed.conditions();
        ambientPi = conditions.ambientPa() * conditions.ambientPa();
        pipes.take(changed);
        drops = new DropLaws(conditions, changed.drops(), Laws.TABLED);
        double density = conditions.airDensityKgPerM3();
        for (int i = 0; i < target.length; i++) {
            target[i] = density * changed.drops().get(i).targetM3PerS().orElse(0.0);
        }
    }

    /**
     * Solves.
     *
     * @return null when solved, else the reason why not
     */
    @Nullable
    Refused solve() {
        if (total() == 0.0) {
            return Reasons.noTarget(network);
        }
        for (int i = 0; i < target.length; i++) {
            if (target[i] > 0.0 && !knots.isFed(knotOf(i))) {
                return Reasons.noSource(network.drops().get(i));
            }
        }
        walk.begin(1);
        hold(0.0);
        start();
        boolean logTerm = network.conditions().logTerm();
        for (int round = 0; round < PRESSURE_ROUNDS; round++) {
            boolean home = walk.home();
            double lift = lift();
            if (sourcePsi() + lift > MOST_PA * MOST_PA) {
                return Reasons.beyondModel(network.drops().get(index));
            }
            if (!home) {
                return Reasons.cap(walk.steps(), pipes.worst(psi, network));
            }
            raise(lift);
            boolean stands = Math.abs(lift) <= Misses.PSI_ROUNDING * (ambientPi + sourcePsi());
            if (stands || (!logTerm && lift < COARSE_OVER_AMBIENT * ambientPi)) {
                return null;
            }
        }
        return Reasons.cap(walk.steps(), pipes.worst(psi, network));
    }

    private double sourcePsi() {
        return psi[knots.ofNode[shape.sourceNode[0]]];
    }

    private double total() {
        return Arrays.stream(target).sum();
    }

    private int knotOf(int drop) {
        return knots.ofNode[shape.dropNode[drop]];
    }

    private void hold(double sourcePsi) {
        for (int knot = 0; knot < psi.length; knot++) {
            psi[knot] = knots.isFed(knot) ? sourcePsi : 0.0;
        }
    }

    private void start() {
        frame.clear();
        for (int block = 0; block <= frame.chains; block++) {
            pipes.rest(block);
            pipes.loadChords(block, psi);
        }
        loadTargets();
        step(1.0);
    }

    private void loadTargets() {
        for (int i = 0; i < target.length; i++) {
            frame.addLeaf(knotOf(i), 0.0, target[i]);
        }
    }

    @Override
    public double load() {
        frame.clear();
        misses.reset(total());
        pipes.countClipped(misses);
        for (int block = 0; block <= frame.chains; block++) {
            pipes.loadTangents(block, psi, misses);
        }
        loadTargets();
        return misses.figure();
    }

    /** A step through wide and narrow pipes together may leave the balance rough; the next one mends it. */
    @Override
    public boolean isBalanced() {
        Arrays.fill(balance, 0.0);
        pipes.addTo(balance);
        for (int i = 0; i < target.length; i++) {
            balance[knotOf(i)] -= target[i];
        }
        return misses.isBalanced(frame.largest(balance));
    }

    @Override
    public void step(double share) {
        frame.solve();
        for (int k = 0; k < frame.unknowns(); k++) {
            psi[frame.knotOfUnknown[k]] += share * frame.change[k];
        }
        for (int block = 0; block <= frame.chains; block++) {
            pipes.advance(block, Double.POSITIVE_INFINITY, share, moved);
        }
    }

    /** How much the sources must rise for the worst drop to have just what it needs; remembers which that is. */
    private double lift() {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < target.length; i++) {
            if (target[i] > 0.0) {
                double open = network.drops().get(i).valveKOpen();
                double lack = drops.psiWithValve(i, target[i], open) - psi[knotOf(i)];
                if (lack > most) {
                    most = lack;
                    index = i;
                }
            }
        }
        return most;
    }

    private void raise(double lift) {
        for (int knot = 0; knot < psi.length; knot++) {
            psi[knot] += knots.isFed(knot) ? lift : 0.0;
        }
    }

    /** Linear solves of the last solve, the start among them. */
    int steps() {
        return walk.steps();
    }

    /** Flow of each pipe, kg/s, in the order of the network. */
    double[] pipeFlow() {
        return pipes.flows();
    }

    /** What the last solve found about the drops. */
    Tuning tuning() {
        double[] spare = new double[target.length];
        double[] valve = new double[target.length];
        for (int i = 0; i < target.length; i++) {
            double open = network.drops().get(i).valveKOpen();
            double tap = psi[knotOf(i)];
            boolean asks = target[i] > 0.0;
            spare[i] = asks ? spare(tap, drops.psiWithValve(i, target[i], open)) : Double.NaN;
            valve[i] = asks ? drops.valveKFor(i, target[i], tap) : Double.NaN;
        }
        return new Tuning(drops.gaugeOf(sourcePsi()), index, spare, valve);
    }

    private double spare(double tapPsi, double neededPsi) {
        double mean = Math.sqrt(tapPsi + ambientPi) + Math.sqrt(neededPsi + ambientPi);
        return (tapPsi - neededPsi) / mean;
    }
}
