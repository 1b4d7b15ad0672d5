package lungfish.network;

import java.util.OptionalDouble;
import lungfish.air.Friction;
import lungfish.air.PipeLaw;
import org.jspecify.annotations.Nullable;

/** The numbers of one answer, as arrays, and their readable face. Nothing changes them once they are made. */
final class Flows {
    private final Network network;
    private final Shape shape;
    private final int iterations;
    private final double density;
    private final double[] nodeGaugePa;
    private final double[] pipeKgPerS;
    private final double[] dropKgPerS;
    private final double[] sourceKgPerS;
    private final boolean tuned;
    private @Nullable Quality quality;

    Flows(Network network, Shape shape, int iterations, Numbers numbers, boolean tuned) {
        this.network = network;
        this.shape = shape;
        this.iterations = iterations;
        this.density = network.conditions().airDensityKgPerM3();
        this.nodeGaugePa = numbers.nodeGaugePa();
        this.pipeKgPerS = numbers.pipeKgPerS();
        this.dropKgPerS = numbers.dropKgPerS();
        this.sourceKgPerS = numbers.sourceKgPerS();
        this.tuned = tuned;
    }

    /**
     * The arrays, handed over.
     *
     * @param nodeGaugePa of each node
     * @param pipeKgPerS of each pipe, from its first end to its second
     * @param dropKgPerS of each drop
     * @param sourceKgPerS of each source
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown: four arrays on their way
    record Numbers(double[] nodeGaugePa, double[] pipeKgPerS, double[] dropKgPerS, double[] sourceKgPerS) {}

    Network network() {
        return network;
    }

    Shape shape() {
        return shape;
    }

    int iterations() {
        return iterations;
    }

    boolean isTuned() {
        return tuned;
    }

    double totalFreeM3PerS() {
        double total = 0.0;
        for (double each : dropKgPerS) {
            total += each;
        }
        return total / density;
    }

    double nodeGaugePa(int node) {
        return nodeGaugePa[node];
    }

    double pipeKgPerS(int pipe) {
        return pipeKgPerS[pipe];
    }

    double dropKgPerS(int drop) {
        return dropKgPerS[drop];
    }

    double sourceKgPerS(int source) {
        return sourceKgPerS[source];
    }

    double tapGaugePa(int drop) {
        return nodeGaugePa[shape.dropNode[drop]];
    }

    double sourceGaugePa(int source) {
        return nodeGaugePa[shape.sourceNode[source]];
    }

    PipeFlow pipe(int i) {
        Pipe pipe = network.pipes().get(i);
        PipeLaw law = pipe.tubing().law(network.conditions());
        double re = law.reynolds(pipeKgPerS[i]);
        Regime regime = Regime.at(re);
        OptionalDouble darcy = regime == Regime.STILL
                ? OptionalDouble.empty()
                : OptionalDouble.of(Friction.darcy(re, law.relativeRoughness()));
        double fallPa = nodeGaugePa[shape.pipeFrom[i]] - nodeGaugePa[shape.pipeTo[i]];
        return new PipeFlow(pipeKgPerS[i] / density, re, darcy, regime, fallPa);
    }

    DropFlow drop(int i) {
        Drop drop = network.drops().get(i);
        double opensAtPa = Drops.opensAtGaugePa(network.conditions(), drop);
        double freeM3PerS = dropKgPerS[i] / density;
        double target = drop.targetM3PerS().orElse(0.0);
        OptionalDouble over = target > 0.0 ? OptionalDouble.of(freeM3PerS / target) : OptionalDouble.empty();
        return new DropFlow(freeM3PerS, tapGaugePa(i), opensAtPa, over, state(freeM3PerS, over));
    }

    private DropFlow.State state(double freeM3PerS, OptionalDouble overTarget) {
        double band = network.conditions().servedBand();
        double over = overTarget.orElse(1.0);
        if (freeM3PerS == 0.0) {
            return DropFlow.State.CLOSED;
        }
        if (over < 1.0 - band) {
            return DropFlow.State.STARVED;
        }
        return over > 1.0 + band ? DropFlow.State.GREEDY : DropFlow.State.SERVED;
    }

    SourceFlow source(int i) {
        double gaugePa = sourceGaugePa(i);
        double freeM3PerS = sourceKgPerS[i] / density;
        if (network.sources().get(i) instanceof Source.Blower blower) {
            Curve curve = blower.curve();
            boolean shut = curve.flowAt(gaugePa) == 0.0;
            return new SourceFlow(gaugePa, freeM3PerS, curve.isInside(gaugePa), shut);
        }
        return new SourceFlow(gaugePa, freeM3PerS, true, false);
    }

    /** Judged when first asked for, since it evaluates every law once more. */
    Quality quality() {
        Quality judged = quality;
        if (judged == null) {
            judged = new Judge(this).quality();
            quality = judged;
        }
        return judged;
    }
}
