package lungfish.network;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import lungfish.air.Tube;

/** The pipes of one frame in a Newton step: their flows, what the linear system gets from them, and what it gives. */
final class PipeWork {
    /** A lively speed in a main: the chord from rest to it is what a pipe is taken for before anything is known. */
    private static final double START_M_PER_S = 4.0;

    /**
     * Fall of ψ that counts for nothing, Pa². A pipe of fittings alone, whose law is flat at rest, is taken for no
     * flatter than at the flow that falls so little, or that is itself nothing.
     */
    private static final double TINY_PSI = 1e-5;

    /** A step that raises a flow by more than this factor is checked against what the pipe can ever take. */
    private static final double TRUST = 3.0;

    private final Frame frame;
    private final Ducts ducts;
    private boolean logTerm;
    private double ambientPi;
    private final boolean[] idle;
    private final boolean[] plain;
    private final double[] curve;
    private final double[] chord;
    private final double[] flatBelow;
    private final double[] conductance;
    private final double[] flowAtOldPsi;
    private double clipped;

    /** Flow of each pipe in the order of the frame, kg/s, from its first end to its second. */
    private final double[] flow;

    PipeWork(Frame frame, Network network, Laws laws) {
        this.frame = frame;
        int count = frame.pipes.count();
        plain = new boolean[frame.chains + 1];
        idle = new boolean[count];
        curve = new double[count];
        ducts = new Ducts(count, laws);
        chord = new double[count];
        flatBelow = new double[count];
        conductance = new double[count];
        flowAtOldPsi = new double[count];
        flow = new double[count];
        take(network);
    }

    /** Takes the numbers of a network of the same shape; the flows stay. */
    void take(Network network) {
        Conditions conditions = network.conditions();
        List<Pipe> pipes = network.pipes();
        logTerm = conditions.logTerm();
        ambientPi = conditions.ambientPa() * conditions.ambientPa();
        double density = conditions.airDensityKgPerM3();
        for (int i = 0; i < flow.length; i++) {
            Pipe pipe = pipes.get(frame.pipes.order[i]);
            idle[i] = frame.knotA[i] == frame.knotB[i];
            ducts.set(i, pipe.tubing(), conditions);
            double lively = density * START_M_PER_S * Tube.areaM2(pipe.boreM());
            ducts.at(i, lively);
            chord[i] = lively / ducts.loss;
            boolean flat = ducts.slopeAtRest(i) == 0.0 && ducts.square(i) > 0.0;
            flatBelow[i] = flat ? Math.sqrt(TINY_PSI / ducts.square(i)) : 0.0;
        }
        findPlain();
    }

    /** Blocks in which no pipe lies within one knot, none is flat at rest, and no law asks for pressures. */
    private void findPlain() {
        for (int block = 0; block < plain.length; block++) {
            plain[block] = !logTerm;
            for (int i = frame.pipes.begin(block); i < frame.pipes.begin(block + 1); i++) {
                plain[block] &= !idle[i] && ducts.slopeAtRest(i) > 0.0;
            }
        }
    }

    /** Nothing moves in a block. */
    void rest(int block) {
        Arrays.fill(flow, frame.pipes.begin(block), frame.pipes.begin(block + 1), 0.0);
    }

    /** Nothing moves between certain knots. */
    void restWhere(IntPredicate still) {
        for (int i = 0; i < flow.length; i++) {
            flow[i] = still.test(frame.knotA[i]) ? 0.0 : flow[i];
        }
    }

    /** Adds what each pipe brings to its knots, kg/s. */
    void addTo(double[] balance) {
        for (int i = 0; i < flow.length; i++) {
            balance[frame.knotA[i]] -= flow[i];
            balance[frame.knotB[i]] += flow[i];
        }
    }

    /** The largest flow of any pipe, kg/s. */
    double largest() {
        double largest = 0.0;
        for (double each : flow) {
            largest = Math.max(largest, Math.abs(each));
        }
        return largest;
    }

    /** Puts each pipe into the system as its chord. */
    void loadChords(int block, double[] psi) {
        int end = frame.pipes.begin(block + 1);
        for (int i = frame.pipes.begin(block); i < end; i++) {
            if (!idle[i]) {
                conductance[i] = chord[i];
                flowAtOldPsi[i] = chord[i] * (psi[frame.knotA[i]] - psi[frame.knotB[i]]);
                frame.addPipe(i, chord[i], flowAtOldPsi[i]);
            }
        }
    }

    /** Flow of each pipe, kg/s, from its first end to its second, in the order of the network. */
    double[] flows() {
        double[] flows = new double[flow.length];
        frame.pipes.write(flow, flows);
        return flows;
    }

    /** Puts each pipe of a block into the system as the tangent of its law at its present flow. */
    void loadTangents(int block, double[] psi, Misses misses) {
        int begin = frame.pipes.begin(block);
        int end = frame.pipes.begin(block + 1);
        if (plain[block]) {
            ducts.at(begin, end, flow, flowAtOldPsi, conductance, curve);
            loadPlain(begin, end, psi, misses);
            return;
        }
        for (int i = begin; i < end; i++) {
            if (!idle[i]) {
                loadTangent(i, psi[frame.knotA[i]], psi[frame.knotB[i]], misses);
            }
        }
    }

    /** Turns losses and slopes, which stand in the arrays of the tangents, into these. */
    private void loadPlain(int begin, int end, double[] psi, Misses misses) {
        int[] knotA = frame.knotA;
        int[] knotB = frame.knotB;
        double[] flows = flow;
        double[] atOldPsi = flowAtOldPsi;
        double[] conductances = conductance;
        for (int i = begin; i < end; i++) {
            double psiA = psi[knotA[i]];
            double psiB = psi[knotB[i]];
            double miss = psiA - psiB - atOldPsi[i];
            double g = 1.0 / conductances[i];
            double whole = flows[i] + g * miss;
            conductances[i] = g;
            atOldPsi[i] = whole;
            misses.element(miss, g, ambientPi + Math.max(Math.abs(psiA), Math.abs(psiB)));
            frame.addPipe(i, g, whole);
        }
    }

    private void loadTangent(int i, double psiA, double psiB, Misses misses) {
        if (flow[i] == 0.0 && ducts.slopeAtRest(i) == 0.0) {
            flow[i] = ducts.flowAt(i, psiA - psiB, 0.0);
            misses.flow(flow[i]);
        }
        ducts.at(i, flow[i]);
        if (logTerm) {
            ducts.addToBracket(i, flow[i], logRatio(psiA, psiB));
        }
        tangent(i, psiA - psiB - ducts.loss, Math.max(Math.abs(psiA), Math.abs(psiB)), misses);
    }

    /** Counts what the last step could not give to the pipes. */
    void countClipped(Misses misses) {
        misses.flow(clipped);
        clipped = 0.0;
    }

    /** Leaves the pipes of a chain on the tangents they have, and adds what they bring to its ends. */
    void keep(int chain) {
        for (int i = frame.pipes.begin(chain); i < frame.pipes.edgeEnd(chain); i++) {
            frame.addKept(i, flow[i]);
        }
    }

    /** Puts the pipes of a chain into the system with the tangents they have. */
    void loadKept(int chain) {
        for (int i = frame.pipes.begin(chain); i < frame.pipes.begin(chain + 1); i++) {
            if (!idle[i]) {
                frame.addPipe(i, conductance[i], flow[i]);
            }
        }
    }

    /** The same after setting each flow to what the pressures alone ask for. */
    void loadInverted(double[] psi, Misses misses) {
        for (int i = 0; i < flow.length; i++) {
            if (!idle[i]) {
                double fall = psi[frame.knotA[i]] - psi[frame.knotB[i]];
                double log = logTerm ? logRatio(psi[frame.knotA[i]], psi[frame.knotB[i]]) : 0.0;
                flow[i] = ducts.flowAt(i, fall, log);
                ducts.at(i, flow[i]);
                ducts.addToBracket(i, flow[i], log);
                tangent(i, 0.0, highest(psi, i), misses);
            }
        }
    }

    /** The id of the pipe whose law is missed most; empty where there is none. */
    String worst(double[] psi, Network network) {
        double most = -1.0;
        String id = "";
        for (int i = 0; i < flow.length; i++) {
            ducts.at(i, flow[i]);
            double miss = Math.abs(psi[frame.knotA[i]] - psi[frame.knotB[i]] - ducts.loss);
            if (!idle[i] && miss > most) {
                most = miss;
                id = network.pipes().get(frame.pipes.order[i]).id();
            }
        }
        return id;
    }

    private void tangent(int i, double miss, double highest, Misses misses) {
        double slope = ducts.slope;
        if (flatBelow[i] > 0.0) {
            slope = Math.max(slope, 2.0 * ducts.square(i) * Math.min(flatBelow[i], misses.tinyFlow()));
        }
        double g = 1.0 / slope;
        double whole = flow[i] + g * miss;
        conductance[i] = g;
        flowAtOldPsi[i] = whole;
        curve[i] = 0.5 * ducts.bend;
        misses.element(miss, g, ambientPi + highest);
        frame.addPipe(i, g, whole);
    }

    private double highest(double[] psi, int i) {
        return Math.max(Math.abs(psi[frame.knotA[i]]), Math.abs(psi[frame.knotB[i]]));
    }

    private double logRatio(double psiA, double psiB) {
        double a = psiA + ambientPi;
        double b = psiB + ambientPi;
        return a > 0.0 && b > 0.0 ? Math.abs(Math.log(a / b)) : 0.0;
    }

    /**
     * Takes the step that the system gave; no pipe takes more than it would if the whole range of ψ lay across it.
     *
     * @param rangePsi between the highest and the lowest ψ that any knot can have; infinite where there is no bound
     * @param moved takes how far the flows have moved
     */
    void advance(int block, double rangePsi, double share, Moved moved) {
        for (int i = frame.pipes.begin(block); i < frame.pipes.begin(block + 1); i++) {
            if (!idle[i]) {
                double old = flow[i];
                double whole = flowAtOldPsi[i] + conductance[i] * frame.changeAlong(i);
                double next = old + share * (whole - old);
                double size = Math.abs(next);
                if (size > TRUST * Math.abs(old)) {
                    double kept = kept(i, next, rangePsi);
                    clipped += Math.abs(kept - next);
                    moved.bounded(kept != next);
                    next = kept;
                }
                flow[i] = next;
                flowAtOldPsi[i] = next;
                boolean laminar = ducts.isLaminar(i, Math.max(size, Math.abs(old)));
                if (laminar) {
                    moved.square(next - old, curve[i], conductance[i]);
                } else {
                    moved.element(next - old, size, curve[i], conductance[i]);
                }
            }
        }
    }

    private double kept(int i, double next, double rangePsi) {
        double most = Quadratic.positiveRoot(ducts.square(i), ducts.slopeAtRest(i), rangePsi);
        return Math.copySign(Math.min(Math.abs(next), most), next);
    }
}
