package lungfish.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/** The drops of one frame in a Newton step, as {@link PipeWork} is for pipes. */
final class DropWork {
    /** A step that raises a drop's flow by more than this factor is checked against what the drop can ever take. */
    private static final double TRUST = 3.0;

    /** A change of a drop's flow beyond this share of it is no longer a small one. */
    private static final double MUCH = 0.01;

    /** What is left of the flow of a drop that a step would run backward, though its tap would keep it open. */
    private static final double NEARLY_CLOSED = 0.125;

    private final Frame frame;
    private final Blocks blocks;
    private final int[] dropKnot;
    private final int[] dropUnknown;
    private final double[] conductance;
    private final double[] curve;
    private final double[] flowAtOldPsi;
    private double clipped;

    private double ambientPi;
    private final Laws laws;
    private final int[] placeOf;
    private DropLaws drops;

    /** Flow of each drop in the order of its blocks, kg/s; 0 when closed. */
    private final double[] flow;

    DropWork(Frame frame, Shape shape, Knots knots, Network network, Laws laws) {
        this.frame = frame;
        this.laws = laws;
        int[] knot = new int[shape.drops()];
        Arrays.setAll(knot, i -> knots.ofNode[shape.dropNode[i]]);
        blocks = frame.leaves(knot);
        dropKnot = blocks.inOrder(knot);
        dropUnknown = frame.unknownsOf(dropKnot);
        curve = new double[knot.length];
        flow = new double[knot.length];
        conductance = new double[knot.length];
        flowAtOldPsi = new double[knot.length];
        placeOf = new int[knot.length];
        for (int i = 0; i < knot.length; i++) {
            placeOf[blocks.order[i]] = i;
        }
        drops = lawsOf(network);
    }

    private DropLaws lawsOf(Network network) {
        List<Drop> here = new ArrayList<>(blocks.count());
        for (int i : blocks.order) {
            here.add(network.drops().get(i));
        }
        return new DropLaws(network.conditions(), here, laws);
    }

    /** Takes the numbers of a network of the same shape; the flows stay. */
    void take(Network network) {
        double ambientPa = network.conditions().ambientPa();
        ambientPi = ambientPa * ambientPa;
        drops = lawsOf(network);
    }

    /** The laws, in the order of the blocks. */
    DropLaws laws() {
        return drops;
    }

    /** Place in the network of a drop here. */
    int inNetwork(int i) {
        return blocks.order[i];
    }

    /** Knot of a drop here. */
    int knot(int i) {
        return dropKnot[i];
    }

    int count() {
        return flow.length;
    }

    /** Nothing moves. */
    void rest() {
        Arrays.fill(flow, 0.0);
        clipped = 0.0;
    }

    /** Nothing moves at certain knots. */
    void restWhere(IntPredicate still) {
        for (int i = 0; i < flow.length; i++) {
            flow[i] = still.test(dropKnot[i]) ? 0.0 : flow[i];
        }
    }

    /** Flow of each drop, kg/s, in the order of the network. */
    double[] flows() {
        double[] flows = new double[flow.length];
        blocks.write(flow, flows);
        return flows;
    }

    /** Takes from each knot what its drops take, kg/s. */
    void addTo(double[] balance) {
        for (int i = 0; i < flow.length; i++) {
            balance[dropKnot[i]] -= flow[i];
        }
    }

    /** Flow through all drops that their chords would give without a step, kg/s. */
    double takenAtOldPsi() {
        return sum(flowAtOldPsi);
    }

    /** Flow through all drops, kg/s. */
    double total() {
        return sum(flow);
    }

    private static double sum(double[] flows) {
        double sum = 0.0;
        for (double each : flows) {
            sum += each;
        }
        return sum;
    }

    /** Puts each drop into the system as the chord from its opening. */
    void loadChords(int block, double[] psi) {
        int end = blocks.begin(block + 1);
        for (int i = blocks.begin(block); i < end; i++) {
            double above = psi[dropKnot[i]] - drops.opensAt(i);
            flowAtOldPsi[i] = above > 0.0 ? drops.mostFlow(i, psi[dropKnot[i]]) : 0.0;
            conductance[i] = above > 0.0 ? flowAtOldPsi[i] / above : 0.0;
            frame.addDrop(dropUnknown[i], conductance[i], flowAtOldPsi[i]);
        }
    }

    /** Puts each open drop into the system as the tangent of its law at its present flow. */
    void loadTangents(int block, double[] psi, Misses misses) {
        int begin = blocks.begin(block);
        int end = blocks.begin(block + 1);
        drops.at(begin, end, flow, flowAtOldPsi, conductance, curve);
        for (int i = begin; i < end; i++) {
            double tap = psi[dropKnot[i]];
            if (flow[i] > 0.0 && !drops.isShut(i)) {
                tangent(i, tap, tap - flowAtOldPsi[i], conductance[i], misses);
            } else {
                reopen(i, tap, misses);
            }
        }
    }

    /** Counts what the last step could not give to the drops. */
    void countClipped(Misses misses) {
        misses.flow(clipped);
        clipped = 0.0;
    }

    /**
     * Turns one tap valve, and gives its drop at once the flow that the last pressures ask for.
     *
     * @return whether it opens at the pressure at which it did before, and still has some resistance
     */
    boolean turnValve(int drop, double valveK, double[] psi) {
        int i = placeOf[drop];
        double opened = drops.opensAt(i);
        drops.setValve(i, valveK);
        settle(i, psi);
        setTangent(i);
        return drops.opensAt(i) == opened && !drops.isFree(i);
    }

    private void setTangent(int i) {
        drops.at(i, flow[i]);
        conductance[i] = flow[i] > 0.0 ? 1.0 / drops.slope : 0.0;
        flowAtOldPsi[i] = flow[i];
        curve[i] = 0.5 * drops.bend;
    }

    /** Puts the drops of a chain into the system with the tangents they have. */
    void loadKept(int chain) {
        for (int i = blocks.begin(chain); i < blocks.begin(chain + 1); i++) {
            frame.addDrop(dropUnknown[i], conductance[i], flow[i]);
        }
    }

    /** The block that a drop of the network belongs to. */
    int blockOf(int drop) {
        return frame.blockOf(dropKnot[placeOf[drop]]);
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
    }

    private void tangent(int i, double tapPsi, double miss, double slope, Misses misses) {
        double g = 1.0 / slope;
        double whole = flow[i] + miss * g;
        conductance[i] = g;
        flowAtOldPsi[i] = whole;
        misses.element(miss, g, ambientPi + Math.abs(tapPsi));
        frame.addDrop(dropUnknown[i], g, whole);
    }

    /** Sets a flow to what its tap's pressure alone asks for; what that unbalances is counted. */
    private void reopen(int i, double tapPsi, Misses misses) {
        double before = flow[i];
        flow[i] = drops.flowAt(i, tapPsi);
        misses.flow(flow[i] - before);
        if (flow[i] > 0.0) {
            drops.at(i, flow[i]);
            curve[i] = 0.5 * drops.bend;
            tangent(i, tapPsi, 0.0, drops.slope, misses);
        } else {
            conductance[i] = 0.0;
            flowAtOldPsi[i] = 0.0;
        }
    }

    /**
     * Takes the step that the system gave. A drop that it would run backward is closed, or nearly so where its tap keeps
     * it open; none takes more than it could at the highest pressure.
     *
     * @param psi after the step
     * @param highestPsi that any knot can have; infinite where there is no bound
     * @param moved takes how far the flows have moved
     */
    void advance(int block, double[] psi, double highestPsi, double share, Moved moved) {
        for (int i = blocks.begin(block); i < blocks.begin(block + 1); i++) {
            double old = flow[i];
            double whole = flowAtOldPsi[i] + conductance[i] * frame.change[dropUnknown[i]];
            double next = old + share * (whole - old);
            if (!(next > 0.0 && next <= TRUST * old)) {
                double kept = kept(i, next, psi[dropKnot[i]], highestPsi);
                moved.bounded(kept != next || (old == 0.0 && psi[dropKnot[i]] > drops.opensAt(i)));
                clipped += Math.abs(kept - next);
                next = kept;
            }
            flow[i] = next;
            flowAtOldPsi[i] = next;
            moved.element(next - old, next, curve[i], conductance[i]);
        }
    }

    private double kept(int i, double next, double tapPsi, double highestPsi) {
        if (next <= 0.0) {
            return tapPsi > drops.opensAt(i) ? NEARLY_CLOSED * flow[i] : 0.0;
        }
        return next > TRUST * flow[i] ? Math.min(next, drops.mostFlow(i, highestPsi)) : next;
    }
}
