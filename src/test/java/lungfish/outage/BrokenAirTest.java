package lungfish.outage;

import static lungfish.outage.OutageRooms.HOUR_S;
import static lungfish.outage.OutageRooms.aFishRoom;
import static lungfish.outage.OutageRooms.air;
import static lungfish.outage.OutageRooms.battery;
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
import java.util.Set;
import lungfish.network.AsSet;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.BlowerId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** The air of the outlets when a machine stops or something of the pipe breaks. */
final class BrokenAirTest {
    /** Two solves of one network. */
    private static final double SOLVED_TWICE_M3_PER_S = 1e-10;

    private static final List<String> ALL = List.of("o1", "o2", "o3", "o4");

    private static Room withOneBlower() {
        return aFishRoom(unbled("b")).build();
    }

    private static Failing stops(String blower) {
        return new Failing.BlowerStops(new BlowerId(blower));
    }

    private static double well(Plan plan, String outlet) {
        Drill drill = play(plan, new Scene(new Failing.Mains(), OptionalDouble.of(1), 10));
        return air(drill, drill.stretches().get(1), outlet);
    }

    private static double broken(Plan plan, Failing what, String outlet) {
        Drill drill = play(plan, scene(what, 1));
        return air(drill, drill.stretches().get(0), outlet);
    }

    @Test
    void theAirOfAWellRoomIsThatOfItsPlan() {
        Plan plan = plan(withOneBlower());

        assertThat(well(plan, "o1"))
                .isCloseTo(plan.outlets().get(0).predictedM3PerS().orElseThrow(), within(SOLVED_TWICE_M3_PER_S));
    }

    @Test
    void theOnlyBlowerStopsAndNobodyGetsAirUntilItIsReplaced() {
        Backup backup = Backup.NONE.withNoticeS(OptionalDouble.of(HOUR_S)).withMendS(OptionalDouble.of(2 * HOUR_S));
        Drill drill = play(aFishRoom(unbled("b")).with(backup).build(), scene(stops("b"), 24));

        assertThat(drill.stretches()).extracting(Stretch::toS).containsExactly(3 * HOUR_S, 24 * HOUR_S);
        assertThat(drill.stretches().get(0).outletsOn()).isZero();
        assertThat(drill.stretches().get(1).outletsOn()).isEqualTo(4);
        assertThat(drill.backS()).hasValue(3 * HOUR_S);
    }

    /** The battery does not help against a broken blower. */
    @Test
    void aBatteryDoesNotReplaceABrokenBlower() {
        Drill drill = play(aFishRoom(unbled("b")).with(battery(40)).build(), scene(stops("b"), 1));

        assertThat(drill.stretches().get(0).outletsOn()).isZero();
    }

    /** The same network with only the second source, solved beside it. */
    @Test
    void ofTwoBlowersTheOtherGoesOn() {
        Plan plan = plan(aFishRoom(unbled("b1"), unbled("b2").at(3.9, 0.2, 2.2)).build());
        AsSet shouldBe = plan.trials().orElseThrow().shouldBe();
        Source second = shouldBe.network().sources().get(1);
        AsSet alone = Solver.of(shouldBe.network().withSources(List.of(second)))
                .asSet()
                .match(set -> set, tuned -> null, refused -> null);

        for (int i = 0; i < ALL.size(); i++) {
            double air = broken(plan, stops("b1"), ALL.get(i));
            assertThat(air).isCloseTo(alone.drop(i).freeM3PerS(), within(SOLVED_TWICE_M3_PER_S));
            assertThat(air).isLessThan(well(plan, ALL.get(i))).isPositive();
        }
    }

    /** Two machines side by side: one of them stops, the other goes on behind its own check valve. */
    @Test
    void ofTwoMachinesInOnePlaceTheOtherGoesOn() {
        Plan plan = plan(aFishRoom(unbled("b").count(2)).build());

        assertThat(broken(plan, stops("b"), "o1")).isLessThan(well(plan, "o1")).isPositive();
    }

    private static RoomBuilder withStandby(Optional<Backup.Standby> standby) {
        Backup backup = Backup.NONE
                .withNoticeS(OptionalDouble.of(HOUR_S))
                .withMendS(OptionalDouble.of(9 * HOUR_S))
                .withStandby(standby);
        return aFishRoom(unbled("b"), unbled("s").standby()).with(backup);
    }

    /** A standby of the same machine, joined where the blower is, gives what the blower gave. */
    @Test
    void anAutomaticStandbyTakesOverAtOnce() {
        Backup.Standby automatic = new Backup.Standby(Backup.Standby.Start.AUTOMATIC, OptionalDouble.empty());
        Plan plan = plan(withStandby(Optional.of(automatic)).build());
        Drill drill = play(plan, scene(stops("b"), 24));
        Stretch first = drill.stretches().get(0);

        assertThat(first.state().standby()).isTrue();
        assertThat(first.toS()).isEqualTo(10 * HOUR_S);
        ALL.forEach(id -> assertThat(air(drill, first, id)).isCloseTo(well(plan, id), within(SOLVED_TWICE_M3_PER_S)));
    }

    /** By hand: noticed after 1 h, ready after the 15 min that are typed, replaced 9 h after it was noticed. */
    @Test
    void aStandbyStartedByHandWaitsForTheHand() {
        Backup.Standby manual = new Backup.Standby(Backup.Standby.Start.MANUAL, OptionalDouble.of(900));
        Drill drill = play(withStandby(Optional.of(manual)).build(), scene(stops("b"), 24));

        assertThat(drill.stretches()).extracting(Stretch::toS).containsExactly(4500.0, 10 * HOUR_S, 24 * HOUR_S);
        assertThat(drill.stretches()).extracting(Stretch::outletsOn).containsExactly(0, 4, 4);
    }

    /** Nothing is said of how it starts: by hand, ready after the half hour that is assumed. */
    @Test
    void aStandbyOfWhichNothingIsSaidIsStartedByHand() {
        Drill drill = play(withStandby(Optional.empty()).build(), scene(stops("b"), 24));

        assertThat(drill.stretches().get(0).toS()).isEqualTo(1.5 * HOUR_S);
    }

    @Test
    void aStandbyOnTheCircuitThatTrippedDoesNotHelp() {
        Backup.Standby automatic = new Backup.Standby(Backup.Standby.Start.AUTOMATIC, OptionalDouble.empty());
        Backup backup = Backup.NONE.withStandby(Optional.of(automatic));
        Room room = aFishRoom(unbled("b").circuit("c"), unbled("s").standby().circuit("c"))
                .with(circuit("c"))
                .with(backup)
                .build();

        assertThat(play(room, scene(new Failing.CircuitTrips(new CircuitId("c")), 1))
                        .stretches()
                        .get(0)
                        .outletsOn())
                .isZero();
    }

    private static Circuit circuit(String id) {
        return new Circuit(new CircuitId(id), id, Optional.empty(), Optional.empty());
    }

    private static Stirrer stirrer(String id, String tank, String circuit) {
        return new Stirrer(
                new StirrerId(id),
                new TankId(tank),
                Stirrer.Kind.POWERHEAD,
                OptionalDouble.empty(),
                Optional.of(new CircuitId(circuit)));
    }

    @Test
    void aCircuitThatTripsStopsWhatHangsOnItAndNothingElse() {
        Room room = aFishRoom(unbled("b").circuit("one"))
                .with(circuit("one"))
                .with(circuit("two"))
                .with(stirrer("s1", "t1", "one"))
                .with(stirrer("s2", "t2", "two"))
                .build();
        Stretch one = play(room, scene(new Failing.CircuitTrips(new CircuitId("one")), 1))
                .stretches()
                .get(0);
        Stretch two = play(room, scene(new Failing.CircuitTrips(new CircuitId("two")), 1))
                .stretches()
                .get(0);

        assertThat(one.outletsOn()).isZero();
        assertThat(one.stirring()).isEqualTo(Set.of(new StirrerId("s2")));
        assertThat(two.outletsOn()).isEqualTo(4);
        assertThat(two.stirring()).isEqualTo(Set.of(new StirrerId("s1")));
    }

    @Test
    void behindABatteryThatTheCircuitChargesTheBlowerGoesOn() {
        Room room = aFishRoom(unbled("b").circuit("blower circuit"))
                .with(circuit("blower circuit"))
                .with(stirrer("s1", "t1", "blower circuit"))
                .with(battery(40))
                .build();
        Stretch first = play(room, scene(new Failing.CircuitTrips(new CircuitId("blower circuit")), 1))
                .stretches()
                .get(0);

        assertThat(first.power()).isEqualTo(Power.BATTERY);
        assertThat(first.outletsOn()).isEqualTo(4);
        assertThat(first.stirring()).isEmpty();
    }

    /** Two tanks on the main before and behind a branch, and one on the branch. */
    private static Plan branched() {
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
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(branch)
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
