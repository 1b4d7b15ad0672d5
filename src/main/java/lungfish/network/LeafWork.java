package lungfish.network;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** The drops and blowers of one frame in a Newton step, as {@link PipeWork} is for pipes. */
final class LeafWork {
    /** A step that changes a drop's flow by more than this factor is not trusted: its law is inverted instead. */
    private static final double TRUST = 3.0;

    private final Frame frame;
    private final int[] dropKnot;
    private final int[] blowerKnot;
    private final double[] conductance;
    private final double[] flowAtOldPsi;
    private final double[] blowerConductance;
    private final double[] blowerFlow;
    private double clipped;

    private DropLaws drops;
    private BlowerLaws blowers;

    /** Flow of each drop, kg/s; 0 when closed. */
    final double[] flow;

    LeafWork(Frame frame, Shape shape, Knots knots, Network network) {
        this.frame = frame;
        drops = new DropLaws(network.conditions(), network.drops());
        blowers = new BlowerLaws(network.conditions(), network.sources());
        dropKnot = new int[shape.drops()];
        Arrays.setAll(dropKnot, i -> knots.ofNode[shape.dropNode[i]]);
        blowerKnot = new int[blowers.count()];
        for (int i = 0; i < blowerKnot.length; i++) {
            blowerKnot[i] = knots.ofNode[shape.sourceNode[blowers.source(i)]];
        }
        flow = new double[dropKnot.length];
        conductance = new double[dropKnot.length];
        flowAtOldPsi = new double[dropKnot.length];
        blowerConductance = new double[blowerKnot.length];
        blowerFlow = new double[blowerKnot.length];
    }

    /** Takes the numbers of a network of the same shape; the flows stay. */
    void take(Network network) {
        drops = new DropLaws(network.conditions(), network.drops());
        blowers = new BlowerLaws(network.conditions(), network.sources());
    }

    DropLaws drops() {
        return drops;
    }

    BlowerLaws blowers() {
        return blowers;
    }

    /** Nothing moves. */
    void rest() {
        Arrays.fill(flow, 0.0);
        Arrays.fill(blowerFlow, 0.0);
        clipped = 0.0;
    }

    /** Nothing moves at certain knots. */
    void restWhere(IntPredicate still) {
        for (int i = 0; i < flow.length; i++) {
            flow[i] = still.test(dropKnot[i]) ? 0.0 : flow[i];
        }
        for (int i = 0; i < blowerFlow.length; i++) {
            blowerFlow[i] = still.test(blowerKnot[i]) ? 0.0 : blowerFlow[i];
        }
    }

    /** Writes what each blower gives to its place among the sources, kg/s. */
    void writeBlowers(double[] psi, double[] sourceFlow) {
        for (int i = 0; i < blowerFlow.length; i++) {
            blowers.at(i, psi[blowerKnot[i]]);
            sourceFlow[blowers.source(i)] = blowers.flow;
        }
    }

    /** Flow through all drops, kg/s. */
    double total() {
        double total = 0.0;
        for (double each : flow) {
            total += each;
        }
        return total;
    }

    /** Puts each drop into the system as the chord from its opening, each blower as its tangent. */
    void loadChords(double[] psi) {
        for (int i = 0; i < flow.length; i++) {
            double above = psi[dropKnot[i]] - drops.opensAt(i);
            flowAtOldPsi[i] = above > 0.0 ? drops.mostFlow(i, psi[dropKnot[i]]) : 0.0;
            conductance[i] = above > 0.0 ? flowAtOldPsi[i] / above : 0.0;
            frame.addLeaf(dropKnot[i], conductance[i], flowAtOldPsi[i]);
        }
        loadBlowers(psi);
    }

    /** Puts each open drop into the system as the tangent of its law at its present flow, each blower likewise. */
    void loadTangents(double[] psi, Misses misses) {
        for (int i = 0; i < flow.length; i++) {
            double tap = psi[dropKnot[i]];
            if (flow[i] > 0.0 && !drops.isShut(i)) {
                tangent(i, tap, misses);
            } else {
                reopen(i, tap, misses);
            }
        }
        misses.flow(clipped);
        countBlowers(psi, misses);
    }

    /** The same after setting each flow to what the pressures alone ask for. */
    void loadInverted(double[] psi, Misses misses) {
        for (int i = 0; i < flow.length; i++) {
            flow[i] = 0.0;
            reopen(i, psi[dropKnot[i]], misses);
        }
        countBlowers(psi, misses);
    }

    private void tangent(int i, double tapPsi, Misses misses) {
        drops.at(i, flow[i]);
        double miss = tapPsi - drops.psi;
        double step = miss / drops.slope;
        double next = flow[i] + step;
        if (next > TRUST * flow[i] || next * TRUST < flow[i]) {
            reopen(i, tapPsi, misses);
        } else {
            load(i, next, miss, misses);
        }
    }

    private void load(int i, double next, double miss, Misses misses) {
        conductance[i] = 1.0 / drops.slope;
        flowAtOldPsi[i] = next;
        misses.element(miss, conductance[i]);
        frame.addLeaf(dropKnot[i], conductance[i], next);
    }

    /** Sets a flow to what its tap's pressure alone asks for; what that unbalances is counted. */
    private void reopen(int i, double tapPsi, Misses misses) {
        double before = flow[i];
        flow[i] = drops.flowAt(i, tapPsi);
        misses.flow(flow[i] - before);
        if (flow[i] > 0.0) {
            drops.at(i, flow[i]);
            load(i, flow[i], 0.0, misses);
        } else {
            conductance[i] = 0.0;
            flowAtOldPsi[i] = 0.0;
        }
    }

    private void countBlowers(double[] psi, Misses misses) {
        for (int i = 0; i < blowerFlow.length; i++) {
            blowers.at(i, psi[blowerKnot[i]]);
            misses.flow(blowers.flow - blowerFlow[i]);
        }
        loadBlowers(psi);
    }

    private void loadBlowers(double[] psi) {
        for (int i = 0; i < blowerFlow.length; i++) {
            blowers.at(i, psi[blowerKnot[i]]);
            blowerFlow[i] = blowers.flow;
            blowerConductance[i] = -blowers.firmSlope();
            frame.addLeaf(blowerKnot[i], blowerConductance[i], -blowers.flow);
        }
    }

    /** Takes the step that the system gave; a drop that it would run backward is closed instead. */
    void advance() {
        clipped = 0.0;
        for (int i = 0; i < flow.length; i++) {
            double next = flowAtOldPsi[i] + conductance[i] * frame.change(dropKnot[i]);
            flow[i] = Math.max(0.0, next);
            clipped += flow[i] - next;
        }
        for (int i = 0; i < blowerFlow.length; i++) {
            blowerFlow[i] -= blowerConductance[i] * frame.change(blowerKnot[i]);
        }
    }
}
