package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
import lungfish.cost.Bill;
import lungfish.cost.Central;
import lungfish.cost.Cost;
import lungfish.cost.CostAnswer;
import lungfish.cost.Running;
import lungfish.sizing.Fleet;
import lungfish.sizing.PumpDuty;

/** Asks what the central blower costs, with its pipe, against the small pumps of today. */
final class Money {
    private Money() {}

    /**
     * The answer.
     *
     * @param gaugePa where the blowers run
     */
    static CostAnswer of(Setup setup, Fleet fleet, double gaugePa, List<PumpDuty> pumps) {
        List<Running> today = pumps.stream()
                .map(pump -> running(pump.machine(), pump.watts(), pump.pump().ageS()))
                .toList();
        return Cost.of(
                setup.room(),
                setup.catalogue(),
                new Central(
                        machines(fleet, gaugePa),
                        accessories(fleet) + PipePrice.of(setup).total()),
                today);
    }

    /** What a fleet costs in its first years with what is fitted to it, without the pipe. */
    static Bill ofMachines(Setup setup, Fleet fleet, double gaugePa, int years) {
        Central alone = new Central(machines(fleet, gaugePa), accessories(fleet));
        return Cost.over(years, setup.room(), setup.catalogue(), alone);
    }

    /** Each machine breathes through a filter and a silencer of its own. */
    private static double accessories(Fleet fleet) {
        return fleet.placed().stream()
                .map(Fleet.Placed::machine)
                .mapToDouble(machine -> machine.count() * machine.accessories().price())
                .sum();
    }

    /** Energy and rebuilds of a fleet in a year, averaged over its life. */
    static double perYear(Setup setup, Fleet fleet, double gaugePa) {
        return Cost.perYear(setup.room(), setup.catalogue(), machines(fleet, gaugePa));
    }

    /** What the machines of a fleet cost to buy, with filters and silencers. */
    static double price(Fleet fleet) {
        return accessories(fleet) + fleet.price();
    }

    private static List<Running> machines(Fleet fleet, double gaugePa) {
        List<Running> machines = new ArrayList<>();
        for (int i = 0; i < fleet.placed().size(); i++) {
            double watts = fleet.watts(i, gaugePa, Wear.TIRED);
            machines.add(running(fleet.placed().get(i).machine(), watts, OptionalDouble.empty()));
        }
        return machines;
    }

    static Running running(Machine machine, double watts, OptionalDouble ageS) {
        return new Running(machine.name(), machine.part(), machine.kind(), machine.count(), watts, ageS);
    }
}
