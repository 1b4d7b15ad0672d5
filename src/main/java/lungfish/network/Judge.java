package lungfish.network;

import java.util.List;

/**
 * Judges an answer from its numbers alone: mass at every node as it was drawn (not as the solver merged it), and every
 * law written out once more. It shares no step with the solver.
 */
final class Judge {
    /** A curve that would take this much to come down from its open flow counts as flat. */
    private static final double FLAT_PA = 1e7;

    private final Flows flows;
    private final Network network;
    private final Shape shape;
    private final double ambientPa;

    Judge(Flows flows) {
        this.flows = flows;
        this.network = flows.network();
        this.shape = flows.shape();
        this.ambientPa = network.conditions().ambientPa();
    }

    Quality quality() {
        double most = Math.max(pipeMissPa(), sourceMissPa());
        if (!flows.isTuned()) {
            most = Math.max(most, dropMissPa());
        }
        return new Quality(imbalanceOverTotal(), most);
    }

    private double imbalanceOverTotal() {
        double[] balance = new double[shape.nodes];
        double total = 0.0;
        for (int i = 0; i < shape.pipes(); i++) {
            balance[shape.pipeFrom[i]] -= flows.pipeKgPerS(i);
            balance[shape.pipeTo[i]] += flows.pipeKgPerS(i);
        }
        for (int i = 0; i < shape.drops(); i++) {
            balance[shape.dropNode[i]] -= flows.dropKgPerS(i);
        }
        for (int i = 0; i < shape.sources(); i++) {
            balance[shape.sourceNode[i]] += flows.sourceKgPerS(i);
            total += Math.max(0.0, flows.sourceKgPerS(i));
        }
        double most = 0.0;
        for (double each : balance) {
            most = Math.max(most, Math.abs(each));
        }
        return total > 0.0 ? most / total : most;
    }

    private double pipeMissPa() {
        double most = 0.0;
        for (int i = 0; i < shape.pipes(); i++) {
            double p1 = flows.nodeGaugePa(shape.pipeFrom[i]) + ambientPa;
            double p2 = flows.nodeGaugePa(shape.pipeTo[i]) + ambientPa;
            double fall = (p1 - p2) * (p1 + p2);
            double miss =
                    fall - lossPa2(network.pipes().get(i), flows.pipeKgPerS(i), 2.0 * Math.abs(Math.log(p1 / p2)));
            most = Math.max(most, Math.abs(miss) / (p1 + p2));
        }
        return most;
    }

    private double lossPa2(Pipe pipe, double kgPerS, double logRatio) {
        double more = network.conditions().logTerm() ? logRatio : 0.0;
        Tubing tubing = new Tubing(pipe.lengthM(), pipe.boreM(), pipe.roughnessM(), pipe.kSum() + more);
        return tubing.law(network.conditions()).piDropPa2(kgPerS);
    }

    private double dropMissPa() {
        List<Drop> drops = network.drops();
        DropLaws laws = new DropLaws(network.conditions(), drops, Laws.WRITTEN);
        double most = 0.0;
        for (int i = 0; i < drops.size(); i++) {
            double tapPa = flows.tapGaugePa(i);
            double tapPsi = tapPa * (tapPa + 2.0 * ambientPa);
            double flow = flows.dropKgPerS(i);
            double miss;
            if (flow > 0.0) {
                laws.at(i, flow);
                miss = Math.abs(tapPsi - laws.psi);
            } else {
                miss = Math.max(0.0, tapPsi - laws.opensAt(i));
            }
            most = Math.max(most, miss / (2.0 * (tapPa + ambientPa)));
        }
        return most;
    }

    private double sourceMissPa() {
        double most = 0.0;
        for (int i = 0; i < shape.sources() && !flows.isTuned(); i++) {
            double gaugePa = flows.sourceGaugePa(i);
            if (network.sources().get(i) instanceof Source.FixedPressure fixed) {
                most = Math.max(most, Math.abs(gaugePa - fixed.gaugePa()));
            } else if (network.sources().get(i) instanceof Source.Blower blower) {
                double each = flows.source(i).freeM3PerS() / blower.count();
                most = Math.max(most, missPa(blower.curve(), gaugePa, each));
            }
        }
        return most;
    }

    /** How far along its curve a machine is from the pressure at its node; on a flat piece any pressure will do. */
    private static double missPa(Curve curve, double gaugePa, double freeM3PerS) {
        double miss = Math.abs(curve.flowAt(gaugePa) - freeM3PerS);
        double slope = Math.abs(curve.slopeAt(gaugePa));
        double flat = curve.flowAt(0.0) / FLAT_PA;
        return miss == 0.0 ? 0.0 : miss / Math.max(slope, flat);
    }
}
