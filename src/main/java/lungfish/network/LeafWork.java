package lungfish.network;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** The drops and blowers of one frame in a Newton step, as {@link PipeWork} is for pipes. */
final class LeafWork {
    /** A step that raises a drop's flow by more than this factor is checked against what the drop can ever take. */
    private static final double TRUST = 3.0;

    /** A change of a drop's flow beyond this share of it is no longer a small one. */
    private static final double MUCH = 0.01;

    /** What is left of the flow of a drop that a step would run backward, though its tap would keep it open. */
    private static final double NEARLY_CLOSED = 0.125;

    private final Frame frame;
    private final int[] dropKnot;
    private final int[] blowerKnot;
    private final double[] conductance;
    private final double[] flowAtOldPsi;
    private final double[] blowerConductance;
    private final double[] blowerFlow;
    private final double[] balancedFlow;
    private double clipped;

    private double ambientPi;
    private final Laws laws;
    private DropLaws drops;
    private BlowerLaws blowers;

    /** Flow of each drop, kg/s; 0 when closed. */
    final double[] flow;

    LeafWork(Frame frame, Shape shape, Knots knots, Network network, Laws laws) {
        this.laws = laws;
        this.frame = frame;
        drops = new DropLaws(network.conditions(), network.drops(), laws);
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
        balancedFlow = new double[blowerKnot.length];
    }

    /** Takes the numbers of a network of the same shape; the flows stay. */
    void take(Network network) {
        double ambientPa = network.conditions().ambientPa();
        ambientPi = ambientPa * ambientPa;
        drops = new DropLaws(network.conditions(), network.drops(), laws);
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

    /** Writes what each blower gives to its place among the sources, as the last step balanced it, kg/s. */
    void writeBlowers(double[] sourceFlow) {
        for (int i = 0; i < balancedFlow.length; i++) {
            sourceFlow[blowers.source(i)] = Math.max(0.0, balancedFlow[i]);
        }
    }

    /** Adds what each blower brings to its knot, less what each drop takes, kg/s. */
    void addTo(double[] balance) {
        for (int i = 0; i < flow.length; i++) {
            balance[dropKnot[i]] -= flow[i];
        }
        for (int i = 0; i < balancedFlow.length; i++) {
            balance[blowerKnot[i]] += balancedFlow[i];
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

    /** Turns one tap valve, and gives its drop at once the flow that the last pressures ask for. */
    void turnValve(int drop, double valveK, double[] psi) {
        drops.setValve(drop, valveK);
        settle(drop, psi);
    }

    /** Gives each drop whose law has changed much the flow that the last pressures ask for: half a step for nothing. */
    void settle(double[] psi) {
        for (int i = 0; i < flow.length; i++) {
            if (flow[i] > 0.0 && !drops.isShut(i)) {
                drops.at(i, flow[i]);
                double step = (psi[dropKnot[i]] - drops.psi) / drops.slope;
                if (Math.abs(step) > MUCH * flow[i]) {
                    settle(i, psi);
                }
            }
        }
    }

    private void settle(int i, double[] psi) {
        double before = flow[i];
        flow[i] = drops.flowAt(i, psi[dropKnot[i]]);
        clipped += Math.abs(flow[i] - before);
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
        load(i, tapPsi, miss, misses);
    }

    private void load(int i, double tapPsi, double miss, Misses misses) {
        conductance[i] = 1.0 / drops.slope;
        flowAtOldPsi[i] = flow[i] + miss * conductance[i];
        misses.element(miss, conductance[i], ambientPi + Math.abs(tapPsi));
        frame.addLeaf(dropKnot[i], conductance[i], flowAtOldPsi[i]);
    }

    /** Sets a flow to what its tap's pressure alone asks for; what that unbalances is counted. */
    private void reopen(int i, double tapPsi, Misses misses) {
        double before = flow[i];
        flow[i] = drops.flowAt(i, tapPsi);
        misses.flow(flow[i] - before);
        if (flow[i] > 0.0) {
            drops.at(i, flow[i]);
            load(i, tapPsi, 0.0, misses);
        } else {
            conductance[i] = 0.0;
            flowAtOldPsi[i] = 0.0;
        }
    }

    private void countBlowers(double[] psi, Misses misses) {
        for (int i = 0; i < blowerFlow.length; i++) {
            blowers.at(i, psi[blowerKnot[i]]);
            double miss = blowers.flow - blowerFlow[i];
            double conductance = -blowers.firmSlope();
            if (conductance > 0.0) {
                misses.element(miss / conductance, conductance, ambientPi + Math.abs(psi[blowerKnot[i]]));
            } else {
                misses.flow(miss);
            }
            balancedFlow[i] = blowerFlow[i];
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

    /** Keeps a step from crossing the kinks of check valves at the blowers. */
    void stopAtKinks(double[] beforePsi, double[] psi) {
        for (int i = 0; i < blowerKnot.length; i++) {
            int knot = blowerKnot[i];
            psi[knot] = blowers.stoppedAtShut(i, beforePsi[knot], psi[knot]);
        }
    }

    /**
     * Takes the step that the system gave. A drop that it would run backward is closed, or nearly so where its tap keeps
     * it open; none takes more than it could at the highest pressure.
     *
     * @param psi after the step
     * @param highestPsi that any knot can have; infinite where there is no bound
     */
    void advance(double[] psi, double highestPsi, double share) {
        clipped = 0.0;
        for (int i = 0; i < flow.length; i++) {
            double whole = flowAtOldPsi[i] + conductance[i] * frame.change(dropKnot[i]);
            double next = flow[i] + share * (whole - flow[i]);
            double kept = kept(i, next, psi[dropKnot[i]], highestPsi);
            clipped += Math.abs(kept - next);
            flow[i] = kept;
        }
        for (int i = 0; i < blowerFlow.length; i++) {
            blowerFlow[i] -= share * blowerConductance[i] * frame.change(blowerKnot[i]);
        }
    }

    private double kept(int i, double next, double tapPsi, double highestPsi) {
        if (next <= 0.0) {
            return tapPsi > drops.opensAt(i) ? NEARLY_CLOSED * flow[i] : 0.0;
        }
        return next > TRUST * flow[i] ? Math.min(next, drops.mostFlow(i, highestPsi)) : next;
    }
}
