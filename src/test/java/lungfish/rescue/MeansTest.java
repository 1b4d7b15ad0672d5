package lungfish.rescue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.outage.Drill;
import lungfish.outage.Drills;
import lungfish.outage.Failing;
import lungfish.outage.Scene;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.room.BlowerId;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** Laws of means, in random rooms. */
final class MeansTest {
    private static final int ROOMS = 30;
    private static final Planner PLANNER = new Planner(RescueRooms.FEW);

    /** A room in which means are tried. */
    private static final class Bench {
        final List<Slot> slots;
        final Trials trials;
        final int vessels;

        Bench(Room room) {
            Plan plan = PLANNER.plan(room);
            Drills drills = Drills.of(plan, RescueRooms.FEW).orElseThrow();
            double wantedS = room.wishes().runtimeS().orElseThrow();
            this.slots = new Offers(plan, RescueRooms.FEW, drills, wantedS).slots();
            this.trials = new Trials(room, drills, wantedS, () -> {});
            this.vessels = drills.vessels().size();
        }

        Set<Integer> kept(Hazard hazard, MeansSet set) {
            Trials.Trial trial = trials.of(hazard, set);
            return IntStream.range(0, vessels).filter(trial::keeps).boxed().collect(Collectors.toSet());
        }
    }

    @Test
    void moreOfAnythingNeverKeepsFewerTanks() {
        RescueRooms.rooms(ROOMS).map(Bench::new).forEach(bench -> {
            for (Slot slot : bench.slots) {
                slot.ladders().forEach(ladder -> assertRises(bench, ladder));
            }
        });
    }

    private static void assertRises(Bench bench, Ladder ladder) {
        for (Hazard hazard : Hazard.values()) {
            Set<Integer> before = bench.kept(hazard, MeansSet.NOTHING);
            boolean mayHarm = ladder.top() instanceof Means.Shedding;
            for (Means rung : ladder.rungs()) {
                Set<Integer> kept = bench.kept(hazard, MeansSet.of(rung));
                assertThat(mayHarm || kept.containsAll(before)).as("%s", rung).isTrue();
                before = kept;
            }
        }
    }

    @Test
    void aRungCostsMoreThanTheOneBelow() {
        RescueRooms.rooms(ROOMS).map(Bench::new).forEach(bench -> bench.slots.stream()
                .flatMap(slot -> slot.ladders().stream())
                .forEach(ladder -> assertThat(ladder.rungs().stream()
                                .map(rung -> MeansSet.of(rung))
                                .toList())
                        .isSortedAccordingTo(MeansSet.CHEAPEST_FIRST)));
    }

    /** So that a drill need not be played again for them. */
    @Test
    void meansThatAreNotAgainstAHazardChangeNoAirInIt() {
        RescueRooms.rooms(ROOMS).forEach(room -> {
            Drills drills = Drills.of(PLANNER.plan(room), RescueRooms.FEW).orElseThrow();
            for (Slot slot : new Bench(room).slots) {
                Means most = slot.ladders().get(0).top();
                Drills with = drills.with(most.in(room));
                if (!most.against().contains(Hazard.MAINS)) {
                    assertSameAir(with.play(Scene.mains(9)), drills.play(Scene.mains(9)));
                }
                if (!most.against().contains(Hazard.BLOWER)) {
                    drills.blowers()
                            .forEach(blower -> assertSameAir(with.play(stops(blower)), drills.play(stops(blower))));
                }
            }
        });
    }

    private static Scene stops(BlowerId blower) {
        return new Scene(new Failing.BlowerStops(blower), OptionalDouble.empty(), 90 * 3600);
    }

    /** In the middle of every stretch of either. */
    private static void assertSameAir(Drill one, Drill other) {
        Stream.concat(one.stretches().stream(), other.stretches().stream())
                .mapToDouble(stretch -> (stretch.fromS() + stretch.toS()) / 2)
                .forEach(atS -> assertThat(one.at(atS).airM3PerS())
                        .isEqualTo(other.at(atS).airM3PerS()));
    }
}
