package lungfish.outage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.air.FreeAir;
import lungfish.blower.Machines;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.network.Curve;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.sizing.PumpDuty;

/**
 * The small pumps of today, each with the outlets that it feeds: one that stops takes no other with it. Where an airline slips
 * off, its pump blows into the room, and nothing is counted on for its other outlets. A standby of such a room is a spare that
 * is put in the place of whichever stops.
 *
 * @param spares what each of them gives, tired
 */
record SmallPumps(List<Need> needs, List<PumpDuty> pumps, List<Curve> spares, Catalogue catalogue) implements Plant {
    static SmallPumps of(Plan plan, Catalogue catalogue) {
        return new SmallPumps(plan.demand().needs(), plan.pumps(), spares(plan.room(), catalogue), catalogue);
    }

    private static List<Curve> spares(Room room, Catalogue catalogue) {
        FreeAir air = Surroundings.of(room, catalogue).freeAir();
        return room.blowers(Blower.Role.STANDBY).stream()
                .flatMap(standby -> Machines.chosen(standby, room, catalogue).stream())
                .map(machine -> machine.curve(Wear.TIRED, air))
                .toList();
    }

    @Override
    public Plant standingBy(Room room) {
        return new SmallPumps(needs, pumps, spares(room, catalogue), catalogue);
    }

    @Override
    public List<Double> airM3PerS(State state) {
        Map<OutletId, Double> gets = new HashMap<>();
        if (state.powered()) {
            pumps.stream()
                    .filter(pump -> state.broken().stream().noneMatch(broken -> blowsOut(pump, broken)))
                    .forEach(pump -> {
                        double share = share(pump, state);
                        pump.givesEach().forEach((outlet, gives) -> gets.put(outlet, share * gives));
                    });
        }
        state.broken().ifPresent(broken -> gets.keySet()
                .removeIf(outlet -> outlet.part().equals(broken.part())));
        return needs.stream().map(need -> gets.getOrDefault(need.id(), 0.0)).toList();
    }

    private double share(PumpDuty pump, State state) {
        boolean isStopped = state.stopped().contains(pump.pump().id());
        return !isStopped ? 1 : state.standby() ? shareOfSpare(pump) : 0;
    }

    /** What the best spare gives of what a pump gave, at its pressure; no more than all: what is above is let out. */
    private double shareOfSpare(PumpDuty pump) {
        double spareM3PerS = spares.stream()
                .mapToDouble(spare -> spare.flowAt(pump.gaugePa()))
                .max()
                .orElse(0);
        return pump.givesM3PerS() > 0 ? Math.min(1, Math.max(0, spareM3PerS) / pump.givesM3PerS()) : 0;
    }

    private static boolean blowsOut(PumpDuty pump, Failing broken) {
        return switch (broken.kind()) {
            case HOSE_OFF -> pump.pump().id().part().equals(broken.part());
            case AIRLINE_OFF ->
                pump.served().stream().anyMatch(need -> need.id().part().equals(broken.part()));
            case MAINS, CIRCUIT_TRIPS, BLOWER_STOPS, BRANCH_SHUT, CHECK_VALVE_STUCK -> false;
        };
    }

    @Override
    public double watts() {
        return pumps.stream().mapToDouble(PumpDuty::watts).sum();
    }

    @Override
    public OptionalDouble essentialWatts() {
        return OptionalDouble.empty();
    }

    @Override
    public double startingWatts() {
        return pumps.stream()
                .mapToDouble(pump -> pump.watts() * pump.machine().kind().surgeFactor())
                .sum();
    }

    @Override
    public Set<BlowerId> blowers() {
        return pumps.stream().map(pump -> pump.pump().id()).collect(Collectors.toSet());
    }
}
