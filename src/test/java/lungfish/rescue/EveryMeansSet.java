package lungfish.rescue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.outage.Drill;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.outage.TankDrill;
import lungfish.oxygen.Case;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import lungfish.room.TankId;

/** The slow way: every set there is, each played through whole, in no clever order. */
final class EveryMeansSet {
    private final Room room;
    private final Drills drills;
    private final double wantedS;
    private final Map<MeansSet, Set<TankId>> lostInMains = new HashMap<>();
    private final Map<MeansSet, Set<TankId>> lostByBlower = new HashMap<>();
    private final List<MeansSet> all;

    EveryMeansSet(Room room, Drills drills, double wantedS, List<Slot> slots) {
        this.room = room;
        this.drills = drills;
        this.wantedS = wantedS;
        this.all = every(slots);
    }

    private static List<MeansSet> every(List<Slot> slots) {
        List<MeansSet> all = List.of(MeansSet.NOTHING);
        for (Slot slot : slots) {
            List<MeansSet> more = new ArrayList<>(all);
            for (Ladder ladder : slot.ladders()) {
                for (Means rung : ladder.rungs()) {
                    more.addAll(with(rung, all));
                }
            }
            all = more;
        }
        return all;
    }

    private static List<MeansSet> with(Means rung, List<MeansSet> sets) {
        return sets.stream().map(set -> set.and(rung)).toList();
    }

    /** The first of the cheapest with which none of these is lost. */
    Optional<MeansSet> cheapest(Set<TankId> asked) {
        return all.stream()
                .filter(set -> lost(set).stream().noneMatch(asked::contains))
                .min(MeansSet.CHEAPEST_FIRST);
    }

    /** How many of these the set keeps that keeps most. */
    int most(Set<TankId> asked) {
        return all.stream()
                .mapToInt(set -> {
                    Set<TankId> lost = lost(set);
                    return (int)
                            asked.stream().filter(tank -> !lost.contains(tank)).count();
                })
                .max()
                .orElse(0);
    }

    Set<TankId> lost(MeansSet set) {
        Set<TankId> lost = new HashSet<>(lostInMains.computeIfAbsent(
                without(set, Means.Standby.class), each -> lost(each, Scene.mains(wantedS / 3600))));
        lost.addAll(lostByBlower.computeIfAbsent(without(set, Means.Battery.class), this::byBlower));
        return lost;
    }

    /** What the drill does not look at in a hazard is not tried in it: {@code MeansTest} says that it is so. */
    private static MeansSet without(MeansSet set, Class<? extends Means> kind) {
        return new MeansSet(
                set.means().stream().filter(means -> !kind.isInstance(means)).toList());
    }

    private Set<TankId> byBlower(MeansSet set) {
        double mendedS = drills.with(set.in(room)).habits().replacedS();
        return drills.blowers().stream()
                .flatMap(blower -> lost(set, scene(blower, mendedS)).stream())
                .collect(Collectors.toSet());
    }

    private static Scene scene(BlowerId blower, double mendedS) {
        return new Scene(new Failing.BlowerStops(blower), OptionalDouble.empty(), mendedS);
    }

    private Set<TankId> lost(MeansSet set, Scene scene) {
        Drill drill = drills.with(set.in(room)).play(scene);
        return drill.inDanger(Case.CAUTIOUS).stream()
                .map(TankDrill::tank)
                .map(tank -> tank.id())
                .collect(Collectors.toSet());
    }
}
