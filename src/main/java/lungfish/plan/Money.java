package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.blower.Machine;
import lungfish.blower.Wear;
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
        List<Running> machines = new ArrayList<>();
        double accessories = 0;
        for (int i = 0; i < fleet.placed().size(); i++) {
            Machine machine = fleet.placed().get(i).machine();
            machines.add(running(machine, fleet.watts(i, gaugePa, Wear.TIRED), OptionalDouble.empty()));
            accessories += machine.accessories().price();
        }
        List<Running> today = pumps.stream()
                .map(pump -> running(pump.machine(), pump.watts(), pump.pump().ageS()))
                .toList();
        return Cost.of(
                setup.room(),
                setup.catalogue(),
                new Central(machines, accessories + PipePrice.of(setup).total()),
                today);
    }

    private static Running running(Machine machine, double watts, OptionalDouble ageS) {
        return new Running(machine.name(), machine.part(), machine.kind(), machine.count(), watts, ageS);
    }
}
