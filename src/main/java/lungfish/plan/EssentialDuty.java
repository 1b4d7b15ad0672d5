package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.sizing.Fleet;
import lungfish.sizing.Running;
import lungfish.sizing.Runs;

/**
 * Where the blowers run with only the essential outlets on. The network is solved again at that demand, and machines that
 * are not needed for it are shut: what stays on bleeds the rest.
 *
 * @param outlets that are on
 * @param machinesOn of {@code machines}
 */
public record EssentialDuty(int outlets, int machinesOn, int machines, Running running) {

    /** The duty; empty where no outlet is marked essential. */
    static Optional<EssentialDuty> of(AirSide air) {
        int outlets = (int) air.piped().needs().stream().filter(Need::essential).count();
        if (outlets == 0) {
            return Optional.empty();
        }
        Fleet on = air.fleet();
        Optional<Running> running = running(air, on);
        Optional<Fewest> fewer = fewer(air, on);
        while (fewer.isPresent()) {
            on = fewer.get().fleet();
            running = Optional.of(fewer.get().running());
            fewer = fewer(air, on);
        }
        int machinesOn = on.machines();
        return running.map(
                where -> new EssentialDuty(outlets, machinesOn, air.fleet().machines(), where));
    }

    private record Fewest(Fleet fleet, Running running) {}

    /** One machine shut, so that the others still serve, and draw least. */
    private static Optional<Fewest> fewer(AirSide air, Fleet on) {
        return on.withOneFewer().stream()
                .map(Fleet.Fewer::left)
                .flatMap(left -> running(air, left).stream().map(where -> new Fewest(left, where)))
                .min(Comparator.comparingDouble(fewest -> fewest.running().watts()));
    }

    /** Where these machines run; empty where they cannot serve the essential outlets. */
    private static Optional<Running> running(AirSide air, Fleet fleet) {
        return Solver.of(network(air, fleet))
                .tuned()
                .match(asSet -> Optional.empty(), tuned -> running(air, fleet, tuned), refused -> Optional.empty());
    }

    private static Optional<Running> running(AirSide air, Fleet fleet, Tuned tuned) {
        if (fleet.freeAt(tuned.requiredGaugePa(), Wear.TIRED) < tuned.totalFreeM3PerS()) {
            return Optional.empty();
        }
        double sparePa = air.asked().sparePa();
        return Optional.of(new Runs(tuned.requiredGaugePa(), tuned.totalFreeM3PerS(), sparePa).of(fleet, Wear.TIRED));
    }

    private static Network network(AirSide air, Fleet fleet) {
        Network all = air.piped().network(Upkeep.DUE, fleet.fixedSources(0));
        List<Need> needs = air.piped().needs();
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            Drop drop = all.drops().get(i);
            drops.add(needs.get(i).essential() ? drop : drop.withoutTarget());
        }
        return all.withDrops(drops);
    }
}
