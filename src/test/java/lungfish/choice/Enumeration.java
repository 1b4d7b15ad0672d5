package lungfish.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.network.Network;
import lungfish.network.Tuned;
import lungfish.piping.Stretch;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.reason.Code;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import lungfish.sizing.Limit;

/**
 * The slow and obvious way to the cheapest build: each room is built, one after the other, planned whole, and what its plan
 * says is taken at its word. Nothing is shared, ordered or left out; only the variants are the program's own.
 */
final class Enumeration {
    private final Planner planner;
    private final List<Built> all = new ArrayList<>();
    private final List<Built> withoutSpare = new ArrayList<>();

    /** A build as its own plan tells it. */
    record Built(Room room, double purchase, double total, Set<Limit> missed) {}

    Enumeration(Room room, Catalogue catalogue) {
        this.planner = new Planner(catalogue);
        for (PipeVariant variant : PipeVariants.of(room, planner)) {
            for (BlowerClass kind : catalogue.blowers()) {
                Room built = with(variant.room(), kind);
                all.add(built(built));
                withoutSpare.add(built(built.withWishes(built.wishes().withIndexSparePa(OptionalDouble.of(0)))));
            }
        }
    }

    private static Room with(Room room, BlowerClass kind) {
        List<Blower> blowers =
                room.blowers().isEmpty() ? List.of(Blower.planned(new BlowerId("planned"))) : room.blowers();
        return room.withBlowers(blowers.stream()
                .map(blower -> blower.withMachine(Optional.of(kind.id())))
                .toList());
    }

    /** Those that meet everything but what is left out and cost least to buy. */
    List<Built> cheapest(Optional<Limit> leftOut) {
        List<Built> fitting = (leftOut.equals(Optional.of(Limit.SPARE)) ? withoutSpare : all)
                .stream()
                        .filter(each -> each.missed().stream().allMatch(limit -> leftOut.equals(Optional.of(limit))))
                        .toList();
        double least = fitting.stream().mapToDouble(Built::purchase).min().orElse(0);
        return fitting.stream()
                .filter(each -> each.purchase() <= least + 1e-6)
                .sorted(Comparator.comparingDouble(Built::total))
                .toList();
    }

    /** Of those that meet everything, the one that costs least over the years; of two, the cheaper to buy. */
    Optional<Built> lasting() {
        return all.stream()
                .filter(each -> each.missed().isEmpty())
                .min(Comparator.comparingDouble(Built::total).thenComparingDouble(Built::purchase));
    }

    private Built built(Room room) {
        Plan plan = planner.plan(room);
        Set<Limit> missed = EnumSet.noneOf(Limit.class);
        plan.duty().orElseThrow().candidate().broken().forEach(each -> missed.add(each.limit()));
        told(plan, Code.SHARE_SHORT, Limit.FLOW, missed);
        told(plan, Code.INDEX_BELOW_RESERVE, Limit.SPARE, missed);
        told(plan, Code.BLED_BELOW_NEED, Limit.SPARE, missed);
        if (room.wishes().runtimeS().isPresent()) {
            told(plan, Code.RUNTIME_SHORT, Limit.RUNTIME, missed);
        }
        if (fastestMPerS(plan) > 20) {
            missed.add(Limit.SPEED);
        }
        var central = plan.cost().orElseThrow().central();
        return new Built(room, central.purchase(), central.total(), missed);
    }

    private static void told(Plan plan, Code code, Limit limit, Set<Limit> missed) {
        if (plan.findings().stream().anyMatch(finding -> finding.code() == code)) {
            missed.add(limit);
        }
    }

    /** Volume flow, at the lower pressure of its two ends, over the bore's area. */
    private static double fastestMPerS(Plan plan) {
        Tuned tuned = plan.duty().orElseThrow().needed().tuned();
        Network network = tuned.network();
        Map<String, Double> pressures = new HashMap<>();
        for (int i = 0; i < network.nodes().size(); i++) {
            pressures.put(network.nodes().get(i), tuned.nodeGaugePa(i));
        }
        double ambientPa = network.conditions().ambientPa();
        double fastest = 0;
        for (Stretch stretch : plan.piped().orElseThrow().stretches()) {
            var pipe = network.pipes().get(stretch.pipe());
            double lowerPa = ambientPa
                    + Math.min(pressures.getOrDefault(pipe.from(), 0.0), pressures.getOrDefault(pipe.to(), 0.0));
            double flow = Math.abs(tuned.pipe(stretch.pipe()).freeM3PerS()) * ambientPa / lowerPa;
            fastest = Math.max(fastest, flow / (Math.PI / 4 * pipe.boreM() * pipe.boreM()));
        }
        return fastest;
    }
}
