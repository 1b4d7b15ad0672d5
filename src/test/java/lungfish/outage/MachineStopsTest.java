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
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.network.AsSet;
import lungfish.network.Solver;
import lungfish.network.Source;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.BlowerId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** The air of the outlets when a machine stops or a circuit trips. */
final class MachineStopsTest {
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

    /** A standby of the same machine, joined where the blower is, gives what the blower gave, after the minute that is assumed. */
    @Test
    void anAutomaticStandbyTakesOverWithinAMinute() {
        Backup.Standby automatic = new Backup.Standby(Backup.Standby.Start.AUTOMATIC, OptionalDouble.empty());
        Plan plan = plan(withStandby(Optional.of(automatic)).build());
        Drill drill = play(plan, scene(stops("b"), 24));
        Stretch taken = drill.stretches().get(1);

        assertThat(drill.stretches().get(0).toS()).isEqualTo(60);
        assertThat(taken.state().standby()).isTrue();
        assertThat(taken.toS()).isEqualTo(10 * HOUR_S);
        ALL.forEach(id -> assertThat(air(drill, taken, id)).isCloseTo(well(plan, id), within(SOLVED_TWICE_M3_PER_S)));
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

    private static Room withStandbys(String... circuits) {
        Backup.Standby automatic = new Backup.Standby(Backup.Standby.Start.AUTOMATIC, OptionalDouble.empty());
        RoomBuilder room = aFishRoom(unbled("b").circuit("c"))
                .with(circuit("c"))
                .with(circuit("d"))
                .with(Backup.NONE.withStandby(Optional.of(automatic)));
        for (int i = 0; i < circuits.length; i++) {
            room.with(unbled("s" + i).standby().circuit(circuits[i]));
        }
        return room.build();
    }

    private static Stretch twoMinutesOn(Room room, String circuit) {
        return play(room, scene(new Failing.CircuitTrips(new CircuitId(circuit)), 1))
                .at(120);
    }

    @Test
    void aStandbyOnTheCircuitThatTrippedDoesNotHelp() {
        assertThat(twoMinutesOn(withStandbys("c"), "c").outletsOn()).isZero();
        assertThat(twoMinutesOn(withStandbys("c"), "c").state().standby()).isFalse();
        assertThat(twoMinutesOn(withStandbys("d"), "c").state().standby()).isTrue();
    }

    /** Two of the blower's own machine stand by; the one that still has power gives what the blower gave, and no more. */
    @Test
    void ofTwoStandbysOnlyTheOneWithPowerHelps() {
        Plan plan = plan(withStandbys("c", "d"));

        Drill drill = play(plan, scene(new Failing.CircuitTrips(new CircuitId("c")), 1));

        assertThat(air(drill, drill.at(120), "o1")).isCloseTo(well(plan, "o1"), within(SOLVED_TWICE_M3_PER_S));
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
}
