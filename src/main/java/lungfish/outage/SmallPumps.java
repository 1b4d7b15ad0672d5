package lungfish.outage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.demand.Need;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.sizing.PumpDuty;

/**
 * The small pumps of today, each with the outlets that it feeds: one that stops takes no other with it. Where an airline slips
 * off, its pump blows into the room, and nothing is counted on for its other outlets.
 */
record SmallPumps(List<Need> needs, List<PumpDuty> pumps) implements Plant {
    @Override
    public List<Double> airM3PerS(State state) {
        Map<OutletId, Double> gets = new HashMap<>();
        if (state.powered()) {
            pumps.stream()
                    .filter(pump -> !state.stopped().contains(pump.pump().id()))
                    .filter(pump -> state.broken().stream().noneMatch(broken -> blowsOut(pump, broken)))
                    .forEach(pump -> gets.putAll(pump.givesEach()));
        }
        state.broken().ifPresent(broken -> gets.keySet()
                .removeIf(outlet -> outlet.part().equals(broken.part())));
        return needs.stream().map(need -> gets.getOrDefault(need.id(), 0.0)).toList();
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
