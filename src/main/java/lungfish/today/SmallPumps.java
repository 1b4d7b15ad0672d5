package lungfish.today;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import lungfish.cost.CostAnswer;
import lungfish.demand.Need;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import lungfish.sizing.PumpDuty;
import lungfish.sizing.PumpedAir;

/** The small pumps of today as a way to give the room its air. */
final class SmallPumps {
    private SmallPumps() {}

    /** Empty where the room knows none. */
    static Optional<Way> of(Plan plan, PumpedAir air) {
        return plan.pumps().isEmpty() ? Optional.empty() : Optional.of(way(plan, air));
    }

    private static Way way(Plan plan, PumpedAir air) {
        List<PumpDuty> pumps = plan.pumps();
        return new Way(
                pumps.stream().mapToInt(pump -> pump.machine().count()).sum(),
                circuits(pumps.stream().map(PumpDuty::pump).toList()),
                pumps.stream().mapToDouble(PumpDuty::watts).sum(),
                plan.today().dba(),
                plan.cost().flatMap(CostAnswer::today),
                new Way.Air(
                        air.askedM3PerS(),
                        air.givesM3PerS(),
                        air.missingM3PerS(),
                        air.shortOutlets(),
                        air.isSaid() ? air.unfed() : 0),
                air.isSaid() ? worst(plan) : Optional.empty());
    }

    /** How many circuits these hang on; empty where the room does not say it of each. */
    static OptionalInt circuits(List<Blower> blowers) {
        boolean isSaid = !blowers.isEmpty()
                && blowers.stream().allMatch(blower -> blower.circuit().isPresent());
        return isSaid
                ? OptionalInt.of(
                        (int) blowers.stream().map(Blower::circuit).distinct().count())
                : OptionalInt.empty();
    }

    private static Optional<Failure> worst(Plan plan) {
        return plan.pumps().stream()
                .map(pump -> failure(plan, pump))
                .max(Comparator.comparingDouble(failure -> failure.outlets() * (1 - failure.leftShare())));
    }

    /** Of several side by side the others go on: they give as much as before, less the share of one. */
    private static Failure failure(Plan plan, PumpDuty pump) {
        int count = pump.machine().count();
        double asked = pump.askedM3PerS();
        double left = asked > 0 ? pump.givesM3PerS() * (count - 1) / count / asked : 0;
        return new Failure(pump.pump().name(), pump.served().size(), tanks(plan, pump), Math.min(1, left), false);
    }

    /** Tanks all of whose outlets hang on this pump. */
    private static int tanks(Plan plan, PumpDuty pump) {
        Set<OutletId> stopped = new HashSet<>(pump.givesEach().keySet());
        Set<String> breathing = new HashSet<>();
        Set<String> touched = new HashSet<>();
        for (Need need : plan.demand().needs()) {
            String tank = need.seat().tank().id().text();
            (stopped.contains(need.id()) ? touched : breathing).add(tank);
        }
        touched.removeAll(breathing);
        return touched.size();
    }
}
