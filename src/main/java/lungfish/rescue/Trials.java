package lungfish.rescue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.outage.Stretch;
import lungfish.outage.Watch;
import lungfish.room.BlowerId;
import lungfish.room.Room;

/**
 * A room with means added, drilled. What means have no say in a hazard is left out of it, so that sets which differ in nothing
 * else share one drill.
 */
final class Trials {
    private static final double HOUR_S = 3600;

    /** A month: what lasts longer lasts. */
    static final double LONGEST_H = 720;

    private final Room room;
    private final Drills drills;
    private final double wantedS;
    private final Runnable between;
    private final Map<Hazard, Map<MeansSet, Trial>> known = new HashMap<>();
    private int drilled;

    /**
     * For a room.
     *
     * @param wantedS for how long the mains are away
     * @param between runs before each drill, and may throw to stop them
     */
    Trials(Room room, Drills drills, double wantedS, Runnable between) {
        this.room = room;
        this.drills = drills;
        this.wantedS = wantedS;
        this.between = between;
    }

    /** How a hazard goes with these means. */
    Trial of(Hazard hazard, MeansSet set) {
        MeansSet matters = new MeansSet(set.means().stream()
                .filter(means -> means.against().contains(hazard))
                .toList());
        return known.computeIfAbsent(hazard, each -> new HashMap<>())
                .computeIfAbsent(matters, each -> drill(hazard, each));
    }

    /** What runs, and for how long, when the mains never come back. */
    List<Stretch> lasting(MeansSet set) {
        between.run();
        return drills.with(set.in(room)).watch(Scene.mains(LONGEST_H)).stretches();
    }

    private Trial drill(Hazard hazard, MeansSet set) {
        between.run();
        drilled++;
        Drills with = drills.with(set.in(room));
        List<Watch> watches = new ArrayList<>();
        scenes(hazard, with).forEach(scene -> watches.add(with.watch(scene)));
        return new Trial(watches);
    }

    private List<Scene> scenes(Hazard hazard, Drills with) {
        return switch (hazard) {
            case MAINS -> List.of(Scene.mains(wantedS / HOUR_S));
            case BLOWER ->
                with.blowers().stream()
                        .sorted(Comparator.comparing(BlowerId::text))
                        .map(blower -> new Scene(
                                new Failing.BlowerStops(blower),
                                OptionalDouble.empty(),
                                with.habits().replacedS()))
                        .toList();
        };
    }

    /** How many drills were played; those remembered count once. */
    int drilled() {
        return drilled;
    }

    /** A hazard with some means, in each of the ways in which it can strike. */
    static final class Trial {
        private final List<Watch> watches;
        private int lastLost;

        Trial(List<Watch> watches) {
            this.watches = List.copyOf(watches);
        }

        List<Watch> watches() {
            return watches;
        }

        /** When a tank is first in danger; empty where it never is. */
        OptionalDouble dangerS(int vessel) {
            return watches.stream()
                    .map(watch -> watch.dangerS(vessel))
                    .flatMapToDouble(OptionalDouble::stream)
                    .min();
        }

        /** Whether a tank gets air when it is first in danger. */
        boolean breathesInDanger(int vessel) {
            return watches.stream()
                    .filter(watch -> watch.dangerS(vessel).isPresent())
                    .min(Comparator.comparingDouble(
                            watch -> watch.dangerS(vessel).orElseThrow()))
                    .filter(watch ->
                            watch.breathes(vessel, watch.dangerS(vessel).orElseThrow()))
                    .isPresent();
        }

        boolean keeps(int vessel) {
            return watches.stream().allMatch(watch -> watch.dangerS(vessel).isEmpty());
        }

        /** Whether none of these comes into danger; one that did before is looked at first. */
        boolean keepsAll(List<Integer> vessels) {
            int first = vessels.indexOf(lastLost);
            if (first >= 0 && !keeps(lastLost)) {
                return false;
            }
            for (int vessel : vessels) {
                if (!keeps(vessel)) {
                    lastLost = vessel;
                    return false;
                }
            }
            return true;
        }
    }
}
