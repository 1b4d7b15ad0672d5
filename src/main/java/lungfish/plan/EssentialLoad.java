package lungfish.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.sizing.Runs;

/** What the blower draws with only the essential outlets on: the network is solved again at that demand. */
final class EssentialLoad {
    private EssentialLoad() {}

    /** Watts; absent where no outlet is marked essential. */
    static OptionalDouble watts(AirSide air) {
        List<Need> needs = air.piped().needs();
        if (needs.stream().noneMatch(Need::essential)) {
            return OptionalDouble.empty();
        }
        Network all = air.duty().needed().tuned().network();
        List<Drop> drops = new ArrayList<>();
        for (int i = 0; i < needs.size(); i++) {
            Drop drop = all.drops().get(i);
            drops.add(needs.get(i).essential() ? drop : drop.withoutTarget());
        }
        return Solver.of(all.withDrops(drops))
                .tuned()
                .match(
                        asSet -> OptionalDouble.empty(),
                        tuned -> OptionalDouble.of(watts(air, tuned)),
                        refused -> OptionalDouble.empty());
    }

    private static double watts(AirSide air, Tuned tuned) {
        return new Runs(
                        tuned.requiredGaugePa(),
                        tuned.totalFreeM3PerS(),
                        air.asked().sparePa())
                .of(air.fleet(), Wear.TIRED)
                .watts();
    }
}
