package lungfish.network;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Solves a network with its valves as they are set.
 *
 * <p><b>What is solved.</b> Unknown are ψ = p² − p_amb² at every knot and the flow of every pipe and drop. A pipe asks
 * {@code ψ_a − ψ_b = h(ṁ)}, an open drop {@code ψ = h(ṁ)}, a closed one {@code ṁ = 0} and ψ no higher than its opening;
 * what enters a knot leaves it. All h rise and all blower curves fall, so the answer is the one minimum of a convex
 * function, and there is exactly one.
 *
 * <p><b>How.</b> Newton on pressures <i>and</i> flows. Each element is replaced with its tangent at its present flow,
 * {@code ṁ ← ṁ + g (ψ_a − ψ_b − h(ṁ))} with {@code g = 1/h'(ṁ)}; the flows drop out of the linear system, which keeps
 * one unknown a knot and is symmetric and positive definite. Each law is evaluated once a step and never inverted;
 * after a step mass is balanced to rounding, and the laws catch up quadratically. (Newton on pressures alone inverts
 * every law in every step, at five to eight times the cost; loop corrections need loops and converge linearly.
 * E. Todini and S. Pilati, 1988, in Computer Applications in Water Supply vol. 1, p. 1, for the condensed step.)
 *
 * <p><b>Kinks.</b> A drop that a step would run backward is closed; a closed drop whose tap rises above its opening,
 * or an open one whose tangent cannot be trusted, gets the flow that its own law asks for at that pressure. The flow
 * that this unbalances is counted, and the next step balances it.
 *
 * <p><b>Start.</b> From the last answer, or from one linear solve with every pipe on a chord (rest to a lively speed)
 * and every drop on the chord from its opening to a cheap bound of its flow. About five evaluations follow.
 *
 * <p><b>Safeguard.</b> Where the undamped steps have not come home within their cap, {@link Descent} walks down the
 * convex function itself with a line search, which cannot fail, and the undamped steps polish from there.
 *
 * <p>Pieces where nothing can move are known beforehand ({@link Pieces}) and stand at the pressure where the strongest
 * of their blowers shuts.
 */
final class AsSetSolve {
    private final Shape shape;
    private final Knots knots;
    private final Frame frame;
    private final PipeWork pipes;
    private final DropWork drops;
    private final BlowerWork blowers;
    private final Sweep sweep;
    private final StartPressures startPressures;
    private final Walk walk;
    private final double[] heldPsi;

    /** ψ of each knot, Pa². */
    final double[] psi;

    private Network network;
    private @Nullable Pieces known;
    private boolean warm;
    private boolean changedLaws;

    AsSetSolve(Network network, Shape shape, Knots knots, Laws laws) {
        this.network = network;
        this.shape = shape;
        this.knots = knots;
        frame = new Frame(shape, knots, held(shape, knots));
        heldPsi = new double[shape.sources()];
        pipes = new PipeWork(frame, network, laws);
        drops = new DropWork(frame, shape, knots, network, laws);
        blowers = new BlowerWork(frame, shape, knots, network);
        sweep = new Sweep(frame, pipes, drops, blowers);
        psi = sweep.psi;
        startPressures = new StartPressures(knots, drops, blowers);
        walk = new Walk(sweep, new Descent(frame, pipes, sweep::loadInverted, psi));
        take(network);
    }

    private static boolean[] held(Shape shape, Knots knots) {
        boolean[] held = new boolean[knots.count];
        for (int knot = 0; knot < held.length; knot++) {
            held[knot] = !knots.isFed(knot);
        }
        for (int i = 0; i < shape.sources(); i++) {
            held[knots.ofNode[shape.sourceNode[i]]] |= shape.fixed[i];
        }
        return held;
    }

    /** Takes the numbers of a network of the same shape; the present flows stay as the next start. */
    void take(Network changed) {
        network = changed;
        double ambientPa = changed.conditions().ambientPa();
        pipes.take(changed);
        drops.take(changed);
        blowers.take(changed);
        sweep.take(changed.conditions());
        changedLaws = true;
        known = null;
        for (int i = 0; i < heldPsi.length; i++) {
            heldPsi[i] = Double.NEGATIVE_INFINITY;
            if (changed.sources().get(i) instanceof Source.FixedPressure fixed) {
                heldPsi[i] = fixed.gaugePa() * (fixed.gaugePa() + 2.0 * ambientPa);
            }
        }
    }

    /** Turns one tap valve. */
    void turnValve(int drop, double valveK) {
        boolean opensAsBefore = drops.turnValve(drop, valveK, psi);
        sweep.touch(drop);
        known = opensAsBefore ? known : null;
    }

    /** Forgets the last answer: the next start is cold. */
    void forget() {
        warm = false;
    }

    /**
     * Solves.
     *
     * @return null when solved, else the reason why not
     */
    @Nullable
    Refused solve() {
        Pieces pieces = known == null ? new Pieces(shape, knots, heldPsi, drops, blowers.laws()) : known;
        Refused refusal = known == null ? refusal(pieces) : null;
        if (refusal != null) {
            return refusal;
        }
        known = pieces;
        hold();
        sweep.within(lowest(), pieces.highest());
        walk.begin(warm ? 0 : 1);
        if (!warm) {
            startCold(pieces);
        } else if (changedLaws) {
            drops.settle(psi);
        }
        changedLaws = false;
        settleStill(pieces);
        warm = false;
        refusal = walkHome();
        warm = refusal == null;
        return refusal;
    }

    private @Nullable Refused refusal(Pieces pieces) {
        for (int i = 0; i < shape.drops(); i++) {
            if (drops.laws().isFree(i)) {
                return Reasons.noResistance(network.drops().get(drops.inNetwork(i)));
            }
        }
        Refused clash = HeldClash.find(network, shape, knots);
        return clash == null ? pieces.refusal(network, shape) : clash;
    }

    private double lowest() {
        double lowest = 0.0;
        for (double each : heldPsi) {
            lowest = Double.isFinite(each) ? Math.min(lowest, each) : lowest;
        }
        return lowest;
    }

    private void hold() {
        for (int i = 0; i < heldPsi.length; i++) {
            if (shape.fixed[i]) {
                psi[knots.ofNode[shape.sourceNode[i]]] = heldPsi[i];
            }
        }
    }

    private void startCold(Pieces pieces) {
        guess(startPressures.of(pieces));
        sweep.start();
    }

    private void guess(double[] reference) {
        for (int k = 0; k < frame.unknowns(); k++) {
            int knot = frame.knotOfUnknown[k];
            psi[knot] = reference[knots.piece[knot]];
        }
    }

    private void settleStill(Pieces pieces) {
        boolean any = false;
        for (int piece = 0; piece < knots.pieces; piece++) {
            any |= pieces.isStill(piece);
        }
        if (any) {
            sweep.finishStep();
            sweep.stir();
            for (int knot = 0; knot < psi.length; knot++) {
                if (pieces.isStill(knots.piece[knot])) {
                    psi[knot] = pieces.stillPsi(knots.piece[knot]);
                }
            }
            pipes.restWhere(knot -> pieces.isStill(knots.piece[knot]));
            drops.restWhere(knot -> pieces.isStill(knots.piece[knot]));
            blowers.restWhere(knot -> pieces.isStill(knots.piece[knot]));
        }
    }

    private @Nullable Refused walkHome() {
        boolean home = walk.home();
        Refused beyond = beyondModel();
        if (beyond != null || home) {
            return beyond;
        }
        return Reasons.cap(walk.steps(), pipes.worst(psi, network));
    }

    /** A machine that never gives in, before bores that let nothing through. */
    private @Nullable Refused beyondModel() {
        for (int i = 0; i < shape.sources(); i++) {
            if (psi[knots.ofNode[shape.sourceNode[i]]] > TunedSolve.MOST_PA * TunedSolve.MOST_PA) {
                return Reasons.beyondModel(network.sources().get(i));
            }
        }
        return null;
    }

    /** Linear solves of the last solve, the start among them. */
    int steps() {
        return walk.steps();
    }

    /** Flow of each pipe, kg/s, in the order of the network. */
    double[] pipeFlow() {
        return pipes.flows();
    }

    /** Flow of each drop, kg/s, in the order of the network. */
    double[] dropFlow() {
        return drops.flows();
    }

    /** Flow of each source, kg/s; NaN for a fixed pressure, whose flow is what the rest of its knot leaves it. */
    double[] sourceFlow() {
        double[] flow = new double[shape.sources()];
        Arrays.fill(flow, Double.NaN);
        blowers.write(flow);
        return flow;
    }
}
