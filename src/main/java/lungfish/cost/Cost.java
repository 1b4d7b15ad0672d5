package lungfish.cost;

import static lungfish.reason.Assumable.COST_YEARS;
import static lungfish.reason.Assumable.ENERGY_PRICE;
import static lungfish.reason.Assumable.PUMP_AGE;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lungfish.catalogue.AssumedValue;
import lungfish.catalogue.Catalogue;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Given;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import lungfish.room.Room;

/** Money: what a central blower costs over the years, what keeping today's small pumps costs, and when it pays. */
public final class Cost {
    private static final double YEAR_S = 365.25 * 24 * 3600;

    private final Room room;
    private final Catalogue catalogue;
    private final Given pricePerJ;
    private final int years;
    private final Set<Assumption> assumptions = new LinkedHashSet<>();

    private Cost(Room room, Catalogue catalogue, int years) {
        this.room = room;
        this.catalogue = catalogue;
        this.years = years;
        AssumedValue price = catalogue.assumed(ENERGY_PRICE);
        this.pricePerJ = Given.typedOr(room.supply().pricePerJ(), price.given());
        if (pricePerJ.isAssumed()) {
            assumptions.add(price.about(PartId.ROOM));
        }
    }

    /**
     * Compares a central blower, new, with the pumps that the room has; the pumps are owned already and are not bought
     * again before they wear out.
     */
    public static CostAnswer of(Room room, Catalogue catalogue, Central central, List<Running> today) {
        AssumedValue span = catalogue.assumed(COST_YEARS);
        Cost cost = new Cost(room, catalogue, (int) Math.max(1, Math.round(span.si() / YEAR_S)));
        cost.assumptions.add(span.about(PartId.ROOM));
        return cost.answer(central, today);
    }

    /** What a central blower costs in its first years, new, with nothing beside it. */
    public static Bill over(int years, Room room, Catalogue catalogue, Central central) {
        return new Cost(room, catalogue, years).bill(central.purchase(), central.machines(), List.of());
    }

    /** Energy and rebuilds of machines that run all the year, averaged over their lives; no purchase, no replacement. */
    public static double perYear(Room room, Catalogue catalogue, List<Running> machines) {
        double pricePerJ = room.supply()
                .pricePerJ()
                .orElseGet(() -> catalogue.assumed(ENERGY_PRICE).si());
        double rebuildsPerS =
                machines.stream().mapToDouble(Running::rebuildsPricePerS).sum();
        return YEAR_S * (watts(machines) * pricePerJ + rebuildsPerS);
    }

    private CostAnswer answer(Central plan, List<Running> pumps) {
        Bill central = bill(plan.purchase(), plan.machines(), List.of());
        Optional<Bill> today = pumps.isEmpty() ? Optional.empty() : Optional.of(bill(0, pumps, ages(pumps)));
        OptionalInt payback = today.map(bill -> payback(central, bill)).orElseGet(OptionalInt::empty);
        Optional<Finding> keep = today.filter(bill -> payback.isEmpty()).map(bill -> keepPumps(central, bill));
        return new CostAnswer(
                room.supply().currency(),
                years,
                central,
                today,
                payback,
                keep,
                List.copyOf(assumptions),
                why("cost of the central blower", central, plan.machines()),
                today.map(bill -> why("cost of keeping the small pumps", bill, pumps)));
    }

    private List<Double> ages(List<Running> pumps) {
        AssumedValue share = catalogue.assumed(PUMP_AGE);
        List<Double> ages = new ArrayList<>();
        for (Running pump : pumps) {
            ages.add(pump.ageS().orElse(share.si() * pump.kind().lifeS()));
            if (pump.ageS().isEmpty()) {
                assumptions.add(share.about(pump.part()));
            }
        }
        return ages;
    }

    /** Without ages, all are new. */
    private Bill bill(double purchase, List<Running> machines, List<Double> ages) {
        double energyPerYear = watts(machines) * YEAR_S * pricePerJ.si();
        Spent end = spent(machines, ages, years);
        List<Double> byYear = IntStream.rangeClosed(1, years)
                .mapToObj(year -> {
                    Spent until = spent(machines, ages, year);
                    return purchase + year * energyPerYear + until.wearParts() + until.replacements();
                })
                .toList();
        return new Bill(
                energyPerYear,
                purchase,
                years * energyPerYear,
                end.wearParts(),
                end.replacements(),
                byYear,
                end.events());
    }

    private record Spent(double wearParts, double replacements, Bill.Events events) {
        static final Spent NOTHING = new Spent(0, 0, new Bill.Events(0, 0));

        static Spent on(Running machine, double fromS, int years) {
            double toS = fromS + years * YEAR_S;
            Upkeep upkeep = new Upkeep(machine.kind().rebuildS(), machine.kind().lifeS());
            long rebuilds = machine.count() * (upkeep.rebuilds(toS) - upkeep.rebuilds(fromS));
            long replaced = machine.count() * (upkeep.replacements(toS) - upkeep.replacements(fromS));
            return new Spent(
                    rebuilds * machine.kind().rebuildPrice(),
                    replaced * machine.kind().price(),
                    new Bill.Events(rebuilds, replaced));
        }

        Spent and(Spent other) {
            return new Spent(
                    wearParts + other.wearParts,
                    replacements + other.replacements,
                    new Bill.Events(
                            events.rebuilds() + other.events.rebuilds(), events.replaced() + other.events.replaced()));
        }
    }

    private static Spent spent(List<Running> machines, List<Double> ages, int years) {
        return IntStream.range(0, machines.size())
                .mapToObj(i -> Spent.on(machines.get(i), ages.isEmpty() ? 0 : ages.get(i), years))
                .reduce(Spent.NOTHING, Spent::and);
    }

    private OptionalInt payback(Bill central, Bill today) {
        int year = years;
        while (year > 0 && central.byYear().get(year - 1) <= today.byYear().get(year - 1)) {
            year--;
        }
        return year == years ? OptionalInt.empty() : OptionalInt.of(year + 1);
    }

    private Finding keepPumps(Bill central, Bill today) {
        double dearerPerYear = (central.total() - today.total()) / years;
        return Finding.of(Code.KEEP_SMALL_PUMPS, PartId.ROOM, new Amount("found", dearerPerYear, Dimension.MONEY));
    }

    private Why why(String figure, Bill bill, List<Running> machines) {
        return bill.why(figure + " over " + years + " years", pricePerJ, watts(machines));
    }

    private static double watts(List<Running> machines) {
        return machines.stream().mapToDouble(Running::watts).sum();
    }
}
