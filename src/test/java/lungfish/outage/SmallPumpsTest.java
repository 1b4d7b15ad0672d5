package lungfish.outage;

import static lungfish.outage.OutageRooms.play;
import static lungfish.outage.OutageRooms.scene;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.demand.Need;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.sizing.PumpDuty;
import org.junit.jupiter.api.Test;

/** The room that keeps its small pumps: three of them for seven outlets. */
final class SmallPumpsTest {
    private static final Plan PLAN = DemoPlans.plan("starting-out");

    private static PumpDuty pumpOfSeveral() {
        return PLAN.pumps().stream()
                .filter(pump -> pump.served().size() > 1)
                .findFirst()
                .orElseThrow();
    }

    private static Set<OutletId> served(PumpDuty pump) {
        return pump.served().stream().map(Need::id).collect(Collectors.toSet());
    }

    /** The outlets that get air while this lasts. */
    private static Set<OutletId> on(Failing what) {
        Drill drill = play(PLAN, scene(what, 1));
        List<Double> air = drill.stretches().get(0).airM3PerS();
        return drill.needs().stream()
                .filter(need -> air.get(drill.needs().indexOf(need)) > 0)
                .map(Need::id)
                .collect(Collectors.toSet());
    }

    private static Set<OutletId> allBut(Set<OutletId> those) {
        return PLAN.demand().needs().stream()
                .map(Need::id)
                .filter(id -> !those.contains(id))
                .collect(Collectors.toSet());
    }

    @Test
    void itsAirIsThatOfThePumps() {
        Drill drill = play(PLAN, Scene.mains(1));

        assertThat(PLAN.keepPumps()).isTrue();
        assertThat(drill.plannedBlower()).isFalse();
        assertThat(drill.stretches().get(0).outletsOn()).isZero();
    }

    @Test
    void aPumpThatStopsTakesItsOwnOutletsAndNoOther() {
        PumpDuty pump = pumpOfSeveral();
        BlowerId id = pump.pump().id();

        assertThat(on(new Failing.BlowerStops(id))).isEqualTo(allBut(served(pump)));
        assertThat(on(new Failing.HoseOff(id))).isEqualTo(allBut(served(pump)));
    }

    /** It blows into the room: nothing is counted on for the others on the same pump. */
    @Test
    void anAirlineThatSlipsOffTakesAllOfItsPump() {
        PumpDuty pump = pumpOfSeveral();

        assertThat(on(new Failing.AirlineOff(pump.served().get(0).id()))).isEqualTo(allBut(served(pump)));
    }

    @Test
    void aCheckValveThatSticksTakesItsOutletAlone() {
        OutletId stuck = pumpOfSeveral().served().get(0).id();

        assertThat(on(new Failing.CheckValveStuck(stuck))).isEqualTo(allBut(Set.of(stuck)));
    }

    @Test
    void thereIsNoPipeToShut() {
        assertThat(Drills.of(PLAN, DemoPlans.CATALOGUE).orElseThrow().possible())
                .extracting(Failing::kind)
                .contains(Failing.Kind.BLOWER_STOPS, Failing.Kind.AIRLINE_OFF)
                .doesNotContain(Failing.Kind.BRANCH_SHUT);
    }
}
