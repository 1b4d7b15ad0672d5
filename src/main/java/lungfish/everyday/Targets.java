package lungfish.everyday;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.network.Drops;
import lungfish.room.OutletId;
import lungfish.room.TankId;

/** Whom a disturbance hits, where a keeper has pointed at some outlets, or at none. */
final class Targets {
    private final List<Need> needs;
    private final AsSet trial;

    Targets(List<Need> needs, AsSet trial) {
        this.needs = needs;
        this.trial = trial;
    }

    /** The disturbance, where those meant are pointed at; empty: the whole room. */
    Disturbance of(Disturbance.Kind kind, Set<OutletId> meant) {
        List<Need> those = needs.stream()
                .filter(need -> meant.isEmpty() || meant.contains(need.id()))
                .toList();
        return new Disturbance(
                kind,
                switch (kind) {
                    case MAINS_LOW, FILTER_CLOGGED -> Set.of();
                    case HATCHERY_OFF, HATCHERY_ON -> sometimes();
                    case HALF_DRAIN -> inTheTanksOf(those);
                    case CLEANED, DUE -> ids(those);
                    case AIRLINE_OFF -> one(those, this::blowsOffM3PerS);
                    case SHUT -> meant.isEmpty() ? one(those, i -> trial.drop(i).freeM3PerS()) : ids(those);
                });
    }

    private Set<OutletId> sometimes() {
        return ids(needs.stream()
                .filter(need -> need.seat().outlet().isSometimes())
                .toList());
    }

    private Set<OutletId> inTheTanksOf(List<Need> those) {
        Set<TankId> tanks = those.stream().map(need -> need.seat().tank().id()).collect(Collectors.toSet());
        return ids(needs.stream()
                .filter(need -> tanks.contains(need.seat().tank().id()))
                .toList());
    }

    /** What an airline would let out at the pressure that its tap has now. */
    private double blowsOffM3PerS(int i) {
        return Drops.flowAt(
                trial.network().conditions(),
                Change.blowingOff(trial.network().drops().get(i)),
                trial.drop(i).tapGaugePa());
    }

    /** Nobody loses two airlines at once: the one of them that matters most. */
    private Set<OutletId> one(List<Need> those, IntToDoubleFunction matters) {
        return IntStream.range(0, needs.size())
                .filter(i -> those.contains(needs.get(i)))
                .boxed()
                .max(Comparator.comparingDouble(matters::applyAsDouble))
                .map(i -> Set.of(needs.get(i).id()))
                .orElse(Set.of());
    }

    private static Set<OutletId> ids(List<Need> those) {
        return those.stream().map(Need::id).collect(Collectors.toSet());
    }
}
