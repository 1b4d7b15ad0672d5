package lungfish.rescue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.outage.Drills;
import lungfish.outage.Vessel;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Room;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** The search finds what trying every set finds. */
final class CheapestSetTest {
    private static final int ROOMS = 30;
    private static final Planner PLANNER = new Planner(RescueRooms.FEW);

    @Test
    void theSearchFindsWhatEnumerationFinds() {
        int[] bought = new int[3];
        RescueRooms.rooms(ROOMS).forEach(room -> {
            Plan plan = PLANNER.plan(room);
            Drills drills = Drills.of(plan, RescueRooms.FEW).orElseThrow();
            double wantedS = room.wishes().runtimeS().orElseThrow();
            EveryMeansSet slow = new EveryMeansSet(
                    room, drills, wantedS, new Offers(plan, RescueRooms.FEW, drills, wantedS).slots());
            Rescue rescue = Rescuing.of(plan, RescueRooms.FEW, Progress.UNHEARD).orElseThrow();
            for (Cheapest found : rescue.sets()) {
                assertSame(room, found, slow, asked(drills, found.goal()));
                bought[found.keepsAll() ? (found.isNothing() ? 1 : 0) : 2]++;
            }
        });
        // the rooms try what they are meant to try: some need means, some need none, some cannot be helped
        assertThat(bought).doesNotContain(0);
    }

    private static Set<TankId> asked(Drills drills, Goal goal) {
        return drills.vessels().stream()
                .filter(vessel -> vessel.judged() && (goal == Goal.ALL || vessel.essential()))
                .map(Vessel::tank)
                .map(tank -> tank.id())
                .collect(Collectors.toSet());
    }

    private static void assertSame(Room room, Cheapest found, EveryMeansSet slow, Set<TankId> asked) {
        Optional<MeansSet> cheapest = slow.cheapest(asked);
        assertThat(found.keepsAll()).as("%s", room.racks()).isEqualTo(cheapest.isPresent());
        Set<TankId> lost =
                found.lost().stream().map(each -> each.vessel().tank().id()).collect(Collectors.toSet());
        assertThat(slow.lost(found.set())).filteredOn(asked::contains).isSubsetOf(lost);
        cheapest.ifPresent(set -> assertThat(
                        List.of(found.set().cents(), (long) found.set().things()))
                .isEqualTo(List.of(set.cents(), (long) set.things())));
        if (cheapest.isEmpty()) {
            assertThat(asked.size() - lost.size()).isEqualTo(slow.most(asked));
        }
    }
}
