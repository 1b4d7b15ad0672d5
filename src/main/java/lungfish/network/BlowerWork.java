package lungfish.network;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** The blowers of one frame in a Newton step, as {@link PipeWork} is for pipes. */
final class BlowerWork {
    private final Frame frame;
    private final int[] knot;
    private final double[] conductance;
    private final double[] flow;
    private final double[] balancedFlow;
    private final double[] beforePsi;
    private double ambientPi;
    private BlowerLaws blowers;

    BlowerWork(Frame frame, Shape shape, Knots knots, Network network) {
        this.frame = frame;
        blowers = new BlowerLaws(network.conditions(), network.sources());
        knot = new int[blowers.count()];
        Arrays.setAll(knot, i -> knots.ofNode[shape.sourceNode[blowers.source(i)]]);
        conductance = new double[knot.length];
        flow = new double[knot.length];
        balancedFlow = new double[knot.length];
        beforePsi = new double[knot.length];
    }

    /** Takes the numbers of a network of the same shape; the flows stay. */
    void take(Network network) {
        double ambientPa = network.conditions().ambientPa();
        ambientPi = ambientPa * ambientPa;
        blowers = new BlowerLaws(network.conditions(), network.sources());
    }

    BlowerLaws laws() {
        return blowers;
    }

    /** Knot of a blower. */
    int knot(int i) {
        return knot[i];
    }

    /** Nothing moves. */
    void rest() {
        Arrays.fill(flow, 0.0);
    }

    /** Nothing moves at certain knots. */
    void restWhere(IntPredicate still) {
        for (int i = 0; i < flow.length; i++) {
            flow[i] = still.test(knot[i]) ? 0.0 : flow[i];
        }
    }

    /** Writes what each blower gives to its place among the sources, as the last step balanced it, kg/s. */
    void write(double[] sourceFlow) {
        for (int i = 0; i < balancedFlow.length; i++) {
            sourceFlow[blowers.source(i)] = Math.max(0.0, balancedFlow[i]);
        }
    }

    /** Adds what each blower brings to its knot, kg/s. */
    void addTo(double[] balance) {
        for (int i = 0; i < balancedFlow.length; i++) {
            balance[knot[i]] += balancedFlow[i];
        }
    }

    /** Puts each blower into the system as its tangent, and counts what it gave amiss. */
    void loadTangents(double[] psi, Misses misses) {
        for (int i = 0; i < flow.length; i++) {
            blowers.at(i, psi[knot[i]]);
            double miss = blowers.flow - flow[i];
            double slope = -blowers.firmSlope();
            if (slope > 0.0) {
                misses.element(miss / slope, slope, ambientPi + Math.abs(psi[knot[i]]));
            } else {
                misses.flow(miss);
            }
            balancedFlow[i] = flow[i];
        }
        load(psi);
    }

    /** Puts each blower into the system as its tangent. */
    void load(double[] psi) {
        for (int i = 0; i < flow.length; i++) {
            blowers.at(i, psi[knot[i]]);
            flow[i] = blowers.flow;
            conductance[i] = -blowers.firmSlope();
            frame.addLeaf(knot[i], conductance[i], -blowers.flow);
        }
    }

    /** Remembers where the blowers stand before a step. */
    void remember(double[] psi) {
        for (int i = 0; i < knot.length; i++) {
            beforePsi[i] = psi[knot[i]];
        }
    }

    /** Keeps a step from crossing the kinks of check valves at the blowers; returns whether one would have. */
    boolean stopAtKinks(double[] psi) {
        boolean isStopped = false;
        for (int i = 0; i < knot.length; i++) {
            double whole = psi[knot[i]];
            psi[knot[i]] = blowers.stoppedAtShut(i, beforePsi[i], whole);
            isStopped |= psi[knot[i]] != whole;
        }
        return isStopped;
    }

    /** Takes the step that the system gave. */
    void advance(double share) {
        for (int i = 0; i < flow.length; i++) {
            flow[i] -= share * conductance[i] * frame.change(knot[i]);
        }
    }
}
