package lungfish.outage;

import static lungfish.outage.OutageRooms.aFishRoom;
import static lungfish.outage.OutageRooms.air;
import static lungfish.outage.OutageRooms.outlet;
import static lungfish.outage.OutageRooms.plan;
import static lungfish.outage.OutageRooms.play;
import static lungfish.outage.OutageRooms.scene;
import static lungfish.outage.OutageRooms.unbled;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.room.BlowerId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

/** The air of the outlets when something of the pipe breaks, and what can fail at all. */
final class PipeBreaksTest {
    /** Two solves of one network. */
    private static final double SOLVED_TWICE_M3_PER_S = 1e-10;

    private static final List<String> ALL = List.of("o1", "o2", "o3", "o4");

    private static Room withOneBlower() {
        return aFishRoom(unbled("b")).build();
    }

    private static double well(Plan plan, String outlet) {
        Drill drill = play(plan, new Scene(new Failing.Mains(), OptionalDouble.of(1), 10));
        return air(drill, drill.stretches().get(1), outlet);
    }

    private static double broken(Plan plan, Failing what, String outlet) {
        Drill drill = play(plan, scene(what, 1));
        return air(drill, drill.stretches().get(0), outlet);
    }

    private static Circuit circuit(String id) {
        return new Circuit(new CircuitId(id), id, Optional.empty(), Optional.empty());
    }

    /** Two tanks on the main before and behind a branch, and one on the branch. */
    private static Plan branched() {
        return branched(false);
    }

    private static Plan branched(boolean branchFirst) {
        Run main = aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2));
        Run branch = new Run(
                new RunId("branch"),
                "branch",
                Run.Role.BRANCH,
                "pvc-u-32-pn10",
                false,
                List.of(new Point(2, 0.2, 2.2), new Point(2, 3, 2.2)),
                List.of());
        return plan(aRoom().with(aRack("r")
                        .at(0.5, 0.5)
                        .shelf(
                                0.5,
                                aTank("t1").with(outlet("o1").onRun("main", 1)),
                                aTank("t2").at(0.65).with(outlet("o2").onRun("branch", 1)),
                                aTank("t3").at(1.3).with(outlet("o3").onRun("main", 3))))
                .with(branchFirst ? branch : main)
                .with(branchFirst ? main : branch)
                .with(unbled("b"))
                .build());
    }

    @Test
    void aBranchThatIsShutTakesOnlyWhatLiesBeyondIt() {
        Failing shut = new Failing.BranchShut(new RunId("branch"));

        assertThat(broken(branched(), shut, "o2")).isZero();
        assertThat(broken(branched(), shut, "o1")).isGreaterThan(well(branched(), "o1"));
        assertThat(broken(branched(), shut, "o3")).isGreaterThan(well(branched(), "o3"));
    }

    /** The tee belongs to both: it stays with the main, whichever was drawn first. */
    @Test
    void aBranchThatIsShutLeavesTheMainWhole() {
        assertThat(broken(branched(true), new Failing.BranchShut(new RunId("branch")), "o2"))
                .isZero();
        assertThat(broken(branched(true), new Failing.BranchShut(new RunId("branch")), "o3"))
                .isPositive();
    }

    /** Even what hangs right where the hose joins. */
    @Test
    void aMainThatIsShutLeavesNothingAtItsFeed() {
        Plan plan = plan(aRoom().with(aRack("r")
                        .at(0.5, 0.5)
                        .shelf(
                                0.5,
                                aTank("t1").with(outlet("o1").onRun("main", 0.1)),
                                aTank("t2").at(0.65).with(outlet("o2"))))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(unbled("b"))
                .build());

        assertThat(broken(plan, new Failing.BranchShut(new RunId("main")), "o1"))
                .isZero();
    }

    @Test
    void aMainThatIsShutTakesAllEvenTheBranchBehindIt() {
        Failing shut = new Failing.BranchShut(new RunId("main"));

        assertThat(List.of("o1", "o2", "o3"))
                .allSatisfy(id -> assertThat(broken(branched(), shut, id)).isZero());
    }

    @Test
    void aLoopThatIsShutTakesAll() {
        Plan plan = plan(aRoom().with(
                        aRack("r").at(0.5, 0.5).shelf(0.5, aTank("t1").with(outlet("o1"))))
                .with(aMain("loop", true, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2), new Point(4, 3, 2.2)))
                .with(unbled("b"))
                .build());

        assertThat(broken(plan, new Failing.BranchShut(new RunId("loop")), "o1"))
                .isZero();
    }

    @Test
    void aCheckValveThatSticksShutsItsOutletAndTheOthersGetMore() {
        Plan plan = plan(withOneBlower());
        Failing stuck = new Failing.CheckValveStuck(new OutletId("o3"));

        assertThat(broken(plan, stuck, "o3")).isZero();
        List.of("o1", "o2", "o4")
                .forEach(id -> assertThat(broken(plan, stuck, id)).isGreaterThan(well(plan, id)));
    }

    @Test
    void whereAnAirlineIsOffItsOutletGetsNothingAndTheOthersLess() {
        Plan plan = plan(withOneBlower());
        Failing off = new Failing.AirlineOff(new OutletId("o3"));

        assertThat(broken(plan, off, "o3")).isZero();
        List.of("o1", "o2", "o4")
                .forEach(id -> assertThat(broken(plan, off, id)).isLessThan(well(plan, id)));
    }

    /** The hose blows into the room: what is left of the pressure does not reach down to any air release. */
    @Test
    void whereTheHoseIsOffNobodyGetsAir() {
        Plan plan = plan(withOneBlower());

        ALL.forEach(id -> assertThat(broken(plan, new Failing.HoseOff(new BlowerId("b")), id))
                .isZero());
    }

    /** Nobody touched a valve: the air of an outlet that is not meant stays what it was to the last digit. */
    @Test
    void aCircuitOfHeatersAloneLeavesTheAirAsItWas() {
        Room room = aFishRoom(unbled("b")).with(circuit("heaters")).build();
        Plan plan = plan(room);
        Failing trips = new Failing.CircuitTrips(new CircuitId("heaters"));

        ALL.forEach(id -> assertThat(broken(plan, trips, id)).isCloseTo(well(plan, id), within(SOLVED_TWICE_M3_PER_S)));
        assertThat(play(plan, scene(trips, 24)).inTrouble()).isEmpty();
    }

    /** All that can fail in it: the mains, its blower, its pipe, its hose and its airlines; no check valve is in it. */
    @Test
    void whatCanFailIsListed() {
        List<Failing> possible = Drills.of(plan(withOneBlower()), DemoPlans.CATALOGUE)
                .orElseThrow()
                .possible();

        assertThat(possible)
                .extracting(Failing::kind)
                .containsExactly(
                        Failing.Kind.MAINS,
                        Failing.Kind.BLOWER_STOPS,
                        Failing.Kind.BRANCH_SHUT,
                        Failing.Kind.HOSE_OFF,
                        Failing.Kind.AIRLINE_OFF,
                        Failing.Kind.AIRLINE_OFF,
                        Failing.Kind.AIRLINE_OFF,
                        Failing.Kind.AIRLINE_OFF);
    }
}
