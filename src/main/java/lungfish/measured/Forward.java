package lungfish.measured;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.air.Valve;
import lungfish.blower.Wear;
import lungfish.measured.OutletLaw.Off;
import lungfish.network.AsSet;
import lungfish.network.Conditions;
import lungfish.network.Curve;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;

/** Solves the room of today for something that may have happened to it. Not for two threads at once. */
final class Forward {
    private final Start start;
    private final Unknowns unknowns;
    private final Slopes slopes;
    private final Map<Integer, Solver> solvers = new HashMap<>();

    Forward(Start start, Unknowns unknowns) {
        this.start = start;
        this.unknowns = unknowns;
        this.slopes = new Slopes(start, unknowns);
    }

    /**
     * The room of today.
     *
     * @param at the unknowns
     * @param shut outlets that stood shut while it was read, by their numbers
     * @return empty where it cannot be solved
     */
    Optional<Stand> stand(Happening happening, double[] at, Set<Integer> shut) {
        Off[] off = new Off[start.outlets()];
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < off.length; i++) {
            OutletLaw law = start.laws().get(i);
            Off plain = unknowns.off(i, at);
            off[i] = happening instanceof Happening.Clog clog && clog.outlet() == i
                    ? plain.clogged(law.clog(clog.left(), plain))
                    : plain;
            Drop drop = law.drop(off[i]);
            drops.add(shut.contains(i) ? drop.withValveK(Drop.SHUT_K) : drop);
        }
        Blowing blowing = Blowing.of(start, unknowns, happening, at);
        drops.addAll(openings(blowing));
        Network network = start.ground().network().withDrops(drops).withSources(sources(blowing));
        return solved(network).map(set -> new Stand(start, unknowns, blowing, off, set, shut, slopes));
    }

    private Optional<AsSet> solved(Network network) {
        Solver solver = solvers.computeIfAbsent(network.drops().size(), count -> Solver.of(network));
        solver.use(network);
        solver.forget(); // the answer must not depend on what was asked before
        return solver.asSet().match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }

    /** Bleed and leak, as holes beside the blowers: where in the pipe air is lost hardly matters to it. */
    private List<Drop> openings(Blowing blowing) {
        List<Drop> openings = new ArrayList<>();
        double sheet = start.sheetM3PerS(start.gaugePa());
        for (int place = 0; place < start.ground().fleet().placed().size(); place++) {
            String node = start.ground().fleet().placed().get(place).node();
            double share = start.ground().fleet().freeAt(place, start.gaugePa(), Wear.NEW) / sheet;
            if (blowing.bledM3PerS() > 0) {
                openings.add(hole("bleed " + place, node, blowing.setPa(), share * blowing.bledM3PerS()));
            }
            if (blowing.leakM3PerS() > 0) {
                openings.add(hole("leak " + place, node, blowing.setPa(), share * blowing.leakM3PerS()));
            }
        }
        return openings;
    }

    private Drop hole(String id, String node, double gaugePa, double freeM3PerS) {
        Conditions conditions = start.conditions();
        double ambient = conditions.ambientPa();
        double k = Valve.kTaking(
                ambient + gaugePa, ambient, freeM3PerS * conditions.airDensityKgPerM3(), conditions.pipeTemperatureK());
        return new Drop(
                id, node, k, k, Optional.empty(), Optional.empty(), Optional.empty(), 0, OptionalDouble.empty());
    }

    private List<Source> sources(Blowing blowing) {
        return start.ground().fleet().sources(Wear.NEW).stream()
                .map(source -> source instanceof Source.Blower blower
                        ? blower.withCurve(curve(blower.curve(), blowing))
                        : source)
                .toList();
    }

    private Curve curve(Curve sheet, Blowing blowing) {
        double pivot = sheet.flowAt(blowing.setPa());
        return Curve.of(sheet.points().stream()
                .map(point -> new Curve.Point(point.gaugePa(), blowing.gives(point.freeM3PerS(), pivot)))
                .toList());
    }
}
