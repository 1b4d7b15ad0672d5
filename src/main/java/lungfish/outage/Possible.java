package lungfish.outage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lungfish.demand.Need;
import lungfish.piping.Stretch;
import lungfish.plan.Plan;
import lungfish.room.BlowerId;
import lungfish.room.RunId;

/** All that can fail in a room: the mains first, then blowers, circuits, pipes, hoses, check valves and airlines. */
final class Possible {
    private Possible() {}

    /**
     * All that can fail.
     *
     * @param onPipe whether the air goes through the pipe
     */
    static List<Failing> of(Plan plan, Plant plant, boolean onPipe) {
        List<Failing> all = new ArrayList<>(List.of(new Failing.Mains()));
        List<BlowerId> blowers = plan.room().blowers().stream()
                .map(blower -> blower.id())
                .filter(plant.blowers()::contains)
                .toList();
        blowers.forEach(blower -> all.add(new Failing.BlowerStops(blower)));
        plan.room().circuits().forEach(circuit -> all.add(new Failing.CircuitTrips(circuit.id())));
        if (onPipe) {
            runs(plan).forEach(run -> all.add(new Failing.BranchShut(run)));
        }
        blowers.forEach(blower -> all.add(new Failing.HoseOff(blower)));
        plant.needs().stream()
                .filter(Possible::hasCheckValve)
                .forEach(need -> all.add(new Failing.CheckValveStuck(need.id())));
        plant.needs().forEach(need -> all.add(new Failing.AirlineOff(need.id())));
        return all;
    }

    private static boolean hasCheckValve(Need need) {
        return need.seat().outlet().checkValve().isPresent();
    }

    private static Set<RunId> runs(Plan plan) {
        Set<RunId> runs = new LinkedHashSet<>();
        Optional<List<Stretch>> stretches = plan.piped().map(piped -> piped.stretches());
        stretches.ifPresent(all -> all.forEach(stretch -> runs.add(stretch.run())));
        return runs;
    }
}
