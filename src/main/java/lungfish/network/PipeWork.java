package lungfish.network;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import lungfish.air.Tube;

/** The pipes of one frame in a Newton step: their flows, what the linear system gets from them, and what it gives. */
final class PipeWork {
    /** A lively speed in a main: the chord from rest to it is what a pipe is taken for before anything is known. */
    private static final double START_M_PER_S = 4.0;

    /** Flow at which a pipe of fittings alone, whose law is flat at rest, is taken to have the slope of its law. */
    private static final double LEAST_KG_PER_S = 1e-9;

    private final Frame frame;
    private final Ducts ducts;
    private boolean logTerm;
    private double ambientPi;
    private final double[] chord;
    private final double[] leastSlope;
    private final double[] conductance;
    private final double[] flowAtOldPsi;

    /** Flow of each pipe, kg/s, from its first end to its second. */
    final double[] flow;

    PipeWork(Frame frame, Network network) {
        this.frame = frame;
        int count = network.pipes().size();
        ducts = new Ducts(count);
        chord = new double[count];
        leastSlope = new double[count];
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
            ducts.at(i, LEAST_KG_PER_S);
            leastSlope[i] = 0.5 * ducts.slope;
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
                ducts.at(i, flow[i]);
                if (logTerm) {
                    ducts.addToBracket(i, flow[i], logRatio(psi, i));
                }
                tangent(i, fall - ducts.loss, misses);
            }
        }
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
                tangent(i, 0.0, misses);
            }
        }
    }

    private void tangent(int i, double miss, Misses misses) {
        conductance[i] = 1.0 / Math.max(ducts.slope, leastSlope[i]);
        flowAtOldPsi[i] = flow[i] + conductance[i] * miss;
        misses.element(miss, conductance[i]);
        frame.addPipe(i, conductance[i], flowAtOldPsi[i]);
    }

    private double logRatio(double[] psi, int i) {
        double a = psi[frame.knotA[i]] + ambientPi;
        double b = psi[frame.knotB[i]] + ambientPi;
        return a > 0.0 && b > 0.0 ? Math.abs(Math.log(a / b)) : 0.0;
    }

    /** Takes the step that the system gave. */
    void advance() {
        for (int i = 0; i < flow.length; i++) {
            if (!frame.isIdle(i)) {
                double change = frame.change(frame.knotA[i]) - frame.change(frame.knotB[i]);
                flow[i] = flowAtOldPsi[i] + conductance[i] * change;
            }
        }
    }
}
