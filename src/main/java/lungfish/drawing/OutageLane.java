package lungfish.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import lungfish.outage.Drill;
import lungfish.outage.Power;
import lungfish.outage.Stretch;

/**
 * One lane of a time line: what it is, and when it runs.
 *
 * @param isOff said where a bar is missing; empty: nothing
 */
record OutageLane(String name, List<Bar> bars, boolean isCharge, String isOff) {
    /**
     * A part of a lane.
     *
     * @param from how high it is at its beginning, 0 to 1
     * @param to how high it is at its end
     * @param says in it, where there is room
     * @param draws whether it is used, not only there
     */
    record Bar(double fromS, double toS, double from, double to, String says, boolean draws) {}

    /** Those that have something to tell in this outage; the air comes last. */
    static List<OutageLane> of(Drill drill) {
        List<Stretch> all = drill.stretches();
        List<OutageLane> lanes = new ArrayList<>();
        if (any(all, each -> each.power() != Power.MAINS)) {
            lanes.add(onOff("Mains", all, each -> each.power() == Power.MAINS, "off"));
        }
        machines(drill, lanes);
        if (any(all, each -> each.chargeFrom() > 0 || each.chargeTo() > 0)) {
            lanes.add(battery(all));
        }
        some(lanes, "Generator", all, each -> each.power() == Power.GENERATOR);
        some(lanes, "Standby", all, each -> each.state().standby());
        some(lanes, "Battery pumps", all, each -> each.state().batteryPumps());
        some(lanes, "Essential only", all, each -> each.state().essentialsOnly());
        stirring(all, lanes);
        lanes.add(air(drill));
        return lanes;
    }

    private static void machines(Drill drill, List<OutageLane> lanes) {
        List<Stretch> all = drill.stretches();
        if (any(all, each -> !each.state().stopped().isEmpty())) {
            String name = drill.plannedBlower() ? "Blower" : "Pump";
            lanes.add(onOff(name, all, each -> each.state().stopped().isEmpty(), "stopped"));
        } else if (any(all, each -> each.state().broken().isPresent())) {
            lanes.add(onOff("Pipe", all, each -> each.state().broken().isEmpty(), "broken"));
        }
    }

    private static void some(List<OutageLane> lanes, String name, List<Stretch> all, Predicate<Stretch> runs) {
        if (any(all, runs)) {
            lanes.add(onOff(name, all, runs, ""));
        }
    }

    private static boolean any(List<Stretch> all, Predicate<Stretch> one) {
        return all.stream().anyMatch(one);
    }

    private static OutageLane onOff(String name, List<Stretch> all, Predicate<Stretch> runs, String isOff) {
        List<Bar> bars = new ArrayList<>();
        for (Stretch each : all) {
            if (runs.test(each)) {
                add(bars, new Bar(each.fromS(), each.toS(), 1, 1, "on", true));
            }
        }
        return new OutageLane(name, bars, false, isOff);
    }

    private static void stirring(List<Stretch> all, List<OutageLane> lanes) {
        int most = all.stream().mapToInt(each -> each.stirring().size()).max().orElse(0);
        if (most > 0) {
            lanes.add(steps("Filters, stirrers", all, each -> each.stirring().size(), most));
        }
    }

    private static OutageLane air(Drill drill) {
        return steps(
                "Outlets with air",
                drill.stretches(),
                Stretch::outletsOn,
                drill.needs().size());
    }

    private static OutageLane steps(String name, List<Stretch> all, ToDoubleFunction<Stretch> on, int most) {
        List<Bar> bars = new ArrayList<>();
        for (Stretch each : all) {
            int count = (int) on.applyAsDouble(each);
            double share = (double) count / Math.max(1, most);
            String says = count == most ? "all " + most : count + " of " + most;
            if (count > 0) {
                add(bars, new Bar(each.fromS(), each.toS(), share, share, says, true));
            }
        }
        return new OutageLane(name, bars, false, "none");
    }

    /** A wedge that falls while it carries, and rises while it is charged. */
    private static OutageLane battery(List<Stretch> all) {
        List<Bar> bars = all.stream()
                .filter(each -> each.chargeFrom() > 0 || each.chargeTo() > 0)
                .map(each -> new Bar(
                        each.fromS(),
                        each.toS(),
                        each.chargeFrom(),
                        each.chargeTo(),
                        each.power() == Power.BATTERY ? "carries" : "",
                        each.power() == Power.BATTERY))
                .toList();
        return new OutageLane("Battery", bars, true, "empty");
    }

    /** What goes on as before is one bar. */
    private static void add(List<Bar> bars, Bar bar) {
        Bar last = bars.isEmpty() ? null : bars.get(bars.size() - 1);
        if (last != null
                && last.toS() == bar.fromS()
                && last.to() == bar.from()
                && last.says().equals(bar.says())) {
            bars.set(bars.size() - 1, new Bar(last.fromS(), bar.toS(), last.from(), bar.to(), bar.says(), true));
        } else {
            bars.add(bar);
        }
    }
}
