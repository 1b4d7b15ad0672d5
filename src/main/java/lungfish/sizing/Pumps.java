package lungfish.sizing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lungfish.air.FreeAir;
import lungfish.blower.Machine;
import lungfish.blower.Machines;
import lungfish.blower.Wear;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Demand;
import lungfish.demand.Need;
import lungfish.demand.Surroundings;
import lungfish.network.AsSet;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.piping.PumpPiping;
import lungfish.room.Blower;
import lungfish.room.OutletId;
import lungfish.room.Room;

/** Looks at the small pumps of today, each with the outlets that it feeds, valves as filed. */
public final class Pumps {
    private final Room room;
    private final Demand demand;
    private final Catalogue catalogue;
    private final FreeAir freeAir;

    private Pumps(Room room, Demand demand, Catalogue catalogue) {
        this.room = room;
        this.demand = demand;
        this.catalogue = catalogue;
        this.freeAir = Surroundings.of(room, catalogue).freeAir();
    }

    /** Every pump of today whose class is known, in the order drawn. */
    public static List<PumpDuty> of(Room room, Demand demand, Catalogue catalogue) {
        Pumps pumps = new Pumps(room, demand, catalogue);
        return room.blowers(Blower.Role.TODAY).stream()
                .flatMap(pump ->
                        Machines.chosen(pump, room, catalogue).map(machine -> pumps.duty(pump, machine)).stream())
                .toList();
    }

    private PumpDuty duty(Blower pump, Machine machine) {
        Set<OutletId> named = new HashSet<>(pump.serves());
        List<Need> served = demand.needs().stream()
                .filter(need -> named.contains(need.id()))
                .toList();
        return served.isEmpty() ? idle(pump, machine) : feeding(pump, machine, served);
    }

    /** Nothing is known of what hangs on it: it is taken to run at its rated pressure. */
    private PumpDuty idle(Blower pump, Machine machine) {
        double ratedPa = machine.kind().ratedPa();
        double watts = machine.watts(ratedPa, machine.count() * machine.kind().ratedM3PerS(), freeAir);
        return new PumpDuty(pump, machine, List.of(), List.of(), ratedPa, watts);
    }

    private PumpDuty feeding(Blower pump, Machine machine, List<Need> served) {
        Source source =
                new Source.Blower(pump.id().text(), "pump", machine.curve(Wear.TIRED, freeAir), machine.count());
        Network network = PumpPiping.of(room, served, source, pump.siting().place(), catalogue);
        return Solver.of(network)
                .asSet()
                .match(
                        asSet -> duty(pump, machine, served, asSet),
                        tuned -> idle(pump, machine),
                        refused -> idle(pump, machine));
    }

    private PumpDuty duty(Blower pump, Machine machine, List<Need> served, AsSet asSet) {
        List<Double> gives = IntStream.range(0, served.size())
                .mapToObj(i -> asSet.drop(i).freeM3PerS())
                .toList();
        double gaugePa = asSet.source(0).gaugePa();
        return new PumpDuty(
                pump,
                machine,
                served,
                gives,
                gaugePa,
                machine.watts(gaugePa, asSet.source(0).freeM3PerS(), freeAir));
    }
}
