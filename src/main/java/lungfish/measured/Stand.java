package lungfish.measured;

import java.util.List;
import java.util.Set;
import lungfish.blower.Wear;
import lungfish.measured.OutletLaw.Off;
import lungfish.measured.Unknowns.Felt;
import lungfish.network.AsSet;

/**
 * A solved room of today, and how its pressure answers to each unknown. What anything does to the pressure, it does through the
 * balance of the air: {@code gives(p) − Σ takes(p) − bleeds(p) − leaks(p) = 0}, every tap moving with the blowers, since what the
 * pipe takes is a small part. That is exact at the point itself, and only the slopes rest on it.
 */
final class Stand {
    private static final double STEP_PA = 1;

    private final Start start;
    private final Unknowns unknowns;
    private final Blowing blowing;
    private final Off[] off;
    private final AsSet set;
    private final double headerPa;
    private final double[] header;

    Stand(Start start, Unknowns unknowns, Blowing blowing, Off[] off, AsSet set, Set<Integer> shut, Slopes slopes) {
        this.start = start;
        this.unknowns = unknowns;
        this.blowing = blowing;
        this.off = off;
        this.set = set;
        this.headerPa = set.source(0).gaugePa();
        this.header = header(shut, slopes);
    }

    /** Gauge at the blowers, Pa. */
    double headerPa() {
        return headerPa;
    }

    /** Gauge at a node, Pa. */
    double nodePa(int node) {
        return set.nodeGaugePa(node);
    }

    double tapPa(int outlet) {
        return set.drop(outlet).tapGaugePa();
    }

    double flow(int outlet) {
        return set.drop(outlet).freeM3PerS();
    }

    Off off(int outlet) {
        return off[outlet];
    }

    Blowing blowing() {
        return blowing;
    }

    /** What the pressure in the pipe grows by, Pa for each unit of an unknown. */
    double pressure(int unknown) {
        return header[unknown];
    }

    private double[] header(Set<Integer> shut, Slopes slopes) {
        double[] balance = new double[unknowns.count()];
        double slope = supplySlope() - holesSlope();
        for (int i = 0; i < off.length; i++) {
            double takes = flow(i);
            if (takes > 0 && !shut.contains(i)) {
                Slopes.Of outlet = slopes.of(i, takes, off[i]);
                slope -= 1 / outlet.needs();
                List<Felt> felt = unknowns.felt(i);
                for (int k = 0; k < felt.size(); k++) {
                    balance[felt.get(k).unknown()] += outlet.inputs()[k] / outlet.needs();
                }
            }
        }
        addSupply(balance);
        addHoles(balance);
        for (int k = 0; k < balance.length; k++) {
            balance[k] /= -slope;
        }
        return balance;
    }

    private double gives(double pa) {
        return blowing.gives(start.sheetM3PerS(pa), start.sheetM3PerS(blowing.setPa()));
    }

    private double supplySlope() {
        return (gives(headerPa + STEP_PA) - gives(headerPa - STEP_PA)) / (2 * STEP_PA);
    }

    private double sheetSlope() {
        double pa = blowing.setPa();
        return (start.ground().fleet().freeAt(pa + STEP_PA, Wear.NEW)
                        - start.ground().fleet().freeAt(pa - STEP_PA, Wear.NEW))
                / (2 * STEP_PA);
    }

    private void addSupply(double[] balance) {
        double gives = gives(headerPa);
        balance[unknowns.ageing] -= gives / blowing.left();
        balance[unknowns.steepness] +=
                blowing.share() * blowing.left() * (start.sheetM3PerS(headerPa) - start.sheetM3PerS(blowing.setPa()));
        if (start.isBled()) {
            balance[unknowns.blower] += gives;
        } else {
            double takes = start.takesM3PerS();
            for (int i = 0; i < off.length; i++) {
                balance[Unknowns.flow(i)] += gives * start.laws().get(i).setFlow(off[i]) / takes;
            }
            balance[unknowns.setGauge] -= gives * sheetSlope() / start.sheetM3PerS(blowing.setPa());
        }
    }

    /** What a hole passes today of what it passed when the valves were set: flow goes with the root of squared pressures. */
    private double holes() {
        return Math.sqrt(squares(headerPa) / squares(blowing.setPa()));
    }

    private double holesSlope() {
        double ambient = start.conditions().ambientPa();
        return (blowing.bledM3PerS() + blowing.leakM3PerS()) * holes() * (headerPa + ambient) / squares(headerPa);
    }

    private void addHoles(double[] balance) {
        double takes = start.takesM3PerS();
        double setSlope = (blowing.setPa() + start.conditions().ambientPa()) / squares(blowing.setPa());
        balance[unknowns.seep] -= takes * holes();
        balance[unknowns.setGauge] += (blowing.bledM3PerS() + blowing.leakM3PerS()) * holes() * setSlope;
        if (blowing.bledM3PerS() > 0) {
            double sheet = start.sheetM3PerS(blowing.setPa());
            balance[unknowns.seep] += takes * holes();
            balance[unknowns.blower] -= blowing.share() * sheet * holes();
            balance[unknowns.setGauge] -= blowing.share() * sheetSlope() * holes();
            for (int i = 0; i < off.length; i++) {
                balance[Unknowns.flow(i)] += start.laws().get(i).setFlow(off[i]) * holes();
            }
        }
    }

    private double squares(double gaugePa) {
        return Math.max(1, gaugePa)
                * (Math.max(1, gaugePa) + 2 * start.conditions().ambientPa());
    }
}
