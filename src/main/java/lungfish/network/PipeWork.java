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
    private final double[] chord;
    private final double[] flatBelow;
    private final double[] conductance;
    private final double[] flowAtOldPsi;
    private double clipped;

    /** Flow of each pipe, kg/s, from its first end to its second. */
    final double[] flow;

    PipeWork(Frame frame, Network network, Laws laws) {
        this.frame = frame;
        int count = network.pipes().size();
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
            Pipe pipe = pipes.get(i);
            ducts.set(i, pipe.tubing(), conditions);
            double lively = density * START_M_PER_S * Tube.areaM2(pipe.boreM());
            ducts.at(i, lively);
            chord[i] = lively / ducts.loss;
            boolean flat = ducts.slopeAtRest(i) == 0.0 && ducts.square(i) > 0.0;
            flatBelow[i] = flat ? Math.sqrt(TINY_PSI / ducts.square(i)) : 0.0;
        }
    }

    /** Nothing moves. */
    void rest() {
        Arrays.fill(flow, 0.0);
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
    void loadChords(double[] psi) {
        for (int i = 0; i < flow.length; i++) {
            if (!frame.isIdle(i)) {
                conductance[i] = chord[i];
                flowAtOldPsi[i] = chord[i] * (psi[frame.knotA[i]] - psi[frame.knotB[i]]);
                frame.addPipe(i, chord[i], flowAtOldPsi[i]);
            }
        }
    }

    /** Puts each pipe into the system as the tangent of its law at its present flow. */
    void loadTangents(double[] psi, Misses misses) {
        for (int i = 0; i < flow.length; i++) {
            if (!frame.isIdle(i)) {
                double fall = psi[frame.knotA[i]] - psi[frame.knotB[i]];
                if (flow[i] == 0.0 && ducts.slopeAtRest(i) == 0.0) {
                    flow[i] = ducts.flowAt(i, fall, 0.0);
                    misses.flow(flow[i]);
                }
                ducts.at(i, flow[i]);
                if (logTerm) {
                    ducts.addToBracket(i, flow[i], logRatio(psi, i));
                }
                tangent(i, fall - ducts.loss, highest(psi, i), misses);
            }
        }
        misses.flow(clipped);
    }

    /** The same after setting each flow to what the pressures alone ask for. */
    void loadInverted(double[] psi, Misses misses) {
        for (int i = 0; i < flow.length; i++) {
            if (!frame.isIdle(i)) {
                double fall = psi[frame.knotA[i]] - psi[frame.knotB[i]];
                double log = logTerm ? logRatio(psi, i) : 0.0;
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
            if (!frame.isIdle(i) && miss > most) {
                most = miss;
                id = network.pipes().get(i).id();
            }
        }
        return id;
    }

    private void tangent(int i, double miss, double highest, Misses misses) {
        double leastFlow = Math.min(flatBelow[i], misses.tinyFlow());
        conductance[i] = 1.0 / Math.max(ducts.slope, 2.0 * ducts.square(i) * leastFlow);
        flowAtOldPsi[i] = flow[i] + conductance[i] * miss;
        misses.element(miss, conductance[i], ambientPi + highest);
        frame.addPipe(i, conductance[i], flowAtOldPsi[i]);
    }

    private double highest(double[] psi, int i) {
        return Math.max(Math.abs(psi[frame.knotA[i]]), Math.abs(psi[frame.knotB[i]]));
    }

    private double logRatio(double[] psi, int i) {
        double a = psi[frame.knotA[i]] + ambientPi;
        double b = psi[frame.knotB[i]] + ambientPi;
        return a > 0.0 && b > 0.0 ? Math.abs(Math.log(a / b)) : 0.0;
    }

    /**
     * Takes the step that the system gave; no pipe takes more than it would if the whole range of ψ lay across it.
     *
     * @param rangePsi between the highest and the lowest ψ that any knot can have; infinite where there is no bound
     */
    void advance(double rangePsi, double share) {
        clipped = 0.0;
        for (int i = 0; i < flow.length; i++) {
            if (!frame.isIdle(i)) {
                double change = frame.change(frame.knotA[i]) - frame.change(frame.knotB[i]);
                double whole = flowAtOldPsi[i] + conductance[i] * change;
                double next = flow[i] + share * (whole - flow[i]);
                double kept = Math.abs(next) > TRUST * Math.abs(flow[i]) ? kept(i, next, rangePsi) : next;
                clipped += Math.abs(kept - next);
                flow[i] = kept;
            }
        }
    }

    private double kept(int i, double next, double rangePsi) {
        double most = Quadratic.positiveRoot(ducts.square(i), ducts.slopeAtRest(i), rangePsi);
        return Math.copySign(Math.min(Math.abs(next), most), next);
    }
}
