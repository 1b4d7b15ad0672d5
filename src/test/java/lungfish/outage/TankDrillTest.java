package lungfish.outage;

import static lungfish.outage.OutageRooms.HOUR_S;
import static lungfish.outage.OutageRooms.aFishRoom;
import static lungfish.outage.OutageRooms.air;
import static lungfish.outage.OutageRooms.battery;
import static lungfish.outage.OutageRooms.outlet;
import static lungfish.outage.OutageRooms.plan;
import static lungfish.outage.OutageRooms.play;
import static lungfish.outage.OutageRooms.scene;
import static lungfish.outage.OutageRooms.tank;
import static lungfish.outage.OutageRooms.unbled;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.oxygen.Case;
import lungfish.oxygen.Course;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Climate;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.TankBuilder;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;

/** What becomes of single tanks. */
final class TankDrillTest {
    /** Constants written with four digits. */
    private static final double FOUR_DIGITS_PERCENT = 0.05;

    private static final double ROUNDING_S = 0.01;
    private static final double ROUNDING_G_PER_M3 = 1e-4;

    private static Room roomOf(TankBuilder tank, Backup backup) {
        return aRoom().with(aRack("r").at(0.5, 0.5).shelf(0.5, tank))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(unbled("b"))
                .with(new Climate(
                        OptionalDouble.of(293.15),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0),
                        OptionalDouble.empty()))
                .with(backup)
                .build();
    }

    /** 20 fish of 2 g at 25 °C in 54 L (0.6 by 0.3 by 0.3 m), an outlet 0.2 m deep, fed 0.4 g a day. */
    private static TankBuilder stocked() {
        return aTank("t").temperatureK(298.15).fish(20, 0.002).fed(0.0004).with(outlet("o"));
    }

    /**
     * By hand, in mg, h and m³. Fish 20 · 0.25 · 2^0.8 = 8.706; bacteria half of it, 4.353; food 400/24 · 0.40 · 0.092 · 4.57 =
     * 2.803: 15.86 mg/h. Saturation 8.263 mg/L at 25 °C (Standard Methods 4500-O). Surface 0.18 m², moved: 5.02 cm/h · 1.024^5
     * = 5.652 cm/h, 0.010174 m³/h. Bubbles: air · 1.2041 g/L · 0.2314 · 2.5 %/m · 0.2 m · 0.85 · 1.1259 / 9.092 to 0.97 of
     * saturation. Nothing changes where what comes is what is used.
     */
    @Test
    void theOutageBeginsWhereTheTankStandsWithItsAirOn() {
        Plan plan = plan(roomOf(stocked(), Backup.NONE));
        Drill drill = play(plan, new Scene(new Failing.Mains(), OptionalDouble.of(1), 10));
        double airLPerH = 3.6e6 * air(drill, drill.stretches().get(1), "o");
        double bubblesM3PerH = airLPerH * 1.2041e3 * 0.2314 * 0.025 * 0.2 * 0.85 * 1.1259 / 9092;
        double surfaceM3PerH = 0.010174;
        double likely = (surfaceM3PerH * 8263 + bubblesM3PerH * 0.97 * 8263 - 15.86) / (surfaceM3PerH + bubblesM3PerH);

        double start = tank(drill, "t").courses().orElseThrow().likely().startGPerM3();
        assertThat(start).isCloseTo(likely / 1000, withinPercentage(FOUR_DIGITS_PERCENT));
        assertThat(start).isLessThan(8.263);
    }

    /**
     * Closed form of the first-order balance: {@code t = V/(kA) ln((C0 − Ce)/(C − Ce))}. By hand: kA = 1.1259 cm/h · 0.18 m² =
     * 0.0020266 m³/h; Ce = 8.263 − 15.86/2.0266 = 0.437 mg/L; 0.054/0.0020266 = 26.65 h.
     */
    @Test
    void itsLikelyTimesAreThoseOfTheClosedForm() {
        TankDrill tank = tank(play(roomOf(stocked(), Backup.NONE), Scene.mains(48)), "t");
        double start = tank.courses().orElseThrow().likely().startGPerM3();

        assertThat(tank.alarmS(Case.LIKELY).orElseThrow() / HOUR_S)
                .isCloseTo(26.65 * Math.log((start - 0.437) / (3 - 0.437)), withinPercentage(0.1));
        assertThat(tank.dangerS(Case.LIKELY).orElseThrow() / HOUR_S)
                .isCloseTo(26.65 * Math.log((start - 0.437) / (2 - 0.437)), withinPercentage(0.1));
    }

    /**
     * The cautious figure. By hand: fish 26.12, bacteria 13.06, food 2.803, and the meal 1.2 · 26.12 = 31.34: 73.32 mg/h. kA =
     * 0.168 · 1.1259 cm/h · 0.18 m² = 3.4047e-4 m³/h; Ce = 8.263 − 73.32/0.34047 = −207.1 mg/L; 158.6 h.
     */
    @Test
    void itsCautiousTimesCountTheMealFromTheMomentTheAirStops() {
        TankDrill tank = tank(play(roomOf(stocked(), Backup.NONE), Scene.mains(48)), "t");
        double start = tank.courses().orElseThrow().cautious().startGPerM3();

        assertThat(tank.dangerS(Case.CAUTIOUS).orElseThrow() / HOUR_S)
                .isCloseTo(158.6 * Math.log((start + 207.1) / (2 + 207.1)), withinPercentage(0.2));
    }

    /** What is typed counts from when the battery is empty. */
    @Test
    void aVesselLivesAsLongAsItSaysOnceItsAirIsOff() {
        TankBuilder eggs = aTank("t").survivalS(1800).with(outlet("o"));
        Drill bare = play(roomOf(eggs, Backup.NONE), Scene.mains(24));
        Drill kept = play(roomOf(eggs, battery(4)), Scene.mains(24));

        for (Case how : Case.values()) {
            assertThat(tank(bare, "t").alarmS(how)).hasValue(1800);
            assertThat(tank(bare, "t").dangerS(how)).hasValue(1800);
            assertThat(tank(kept, "t").dangerS(how).orElseThrow())
                    .isCloseTo(kept.stretches().get(0).toS() + 1800, within(ROUNDING_S));
        }
    }

    @Test
    void aVesselWhoseAirIsBackInTimeLives() {
        TankBuilder eggs = aTank("t").survivalS(1800).with(outlet("o"));
        Drill drill =
                play(roomOf(eggs, Backup.NONE), new Scene(new Failing.Mains(), OptionalDouble.of(1799), 24 * HOUR_S));

        assertThat(tank(drill, "t").dangerS(Case.CAUTIOUS)).isEmpty();
        assertThat(drill.inTrouble()).isEmpty();
    }

    /** Half of what the device does its work with is as good as nothing for eggs. */
    @Test
    void aTrickleIsNoAirForAVessel() {
        TankBuilder eggs =
                aTank("t").survivalS(1800).with(outlet("o").essential().leastM3PerS(0.6 / 60_000));
        Backup pump = Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", 1)));
        TankBuilder two = aTank("u").at(0.7).with(outlet("p").essential().targetM3PerS(2.4 / 60_000));
        Room room = aRoom().with(aRack("r").at(0.5, 0.5).shelf(0.5, eggs, two))
                .with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(unbled("b"))
                .with(pump)
                .build();
        Drill drill = play(room, Scene.mains(24));

        // by hand: 1 L/min for 0.8 and 2.4: the eggs get a quarter of a litre, and work with 0.6
        assertThat(air(drill, drill.stretches().get(0), "o")).isCloseTo(0.25 / 60_000, within(1e-9));
        assertThat(tank(drill, "t").dangerS(Case.CAUTIOUS)).hasValue(1800);
    }

    @Test
    void aTankOfWhichNothingIsSaidIsNotJudged() {
        Drill drill = play(roomOf(aTank("t").with(outlet("o")), Backup.NONE), Scene.mains(48));

        assertThat(tank(drill, "t").isJudged()).isFalse();
        assertThat(drill.first()).isEmpty();
        assertThat(drill.judged()).isEmpty();
    }

    @Test
    void aTankWhoseAirNeverStopsStaysWhereItStands() {
        TankDrill tank = tank(play(roomOf(stocked(), battery(400)), Scene.mains(24)), "t");
        for (Case how : Case.values()) {
            Course course = tank.courses().orElseThrow().of(how);
            assertThat(course.atS(12 * HOUR_S)).isCloseTo(course.startGPerM3(), within(ROUNDING_G_PER_M3));
            assertThat(course.endGPerM3()).isCloseTo(course.startGPerM3(), within(ROUNDING_G_PER_M3));
        }
    }

    /** More air than ever is no reason to count a meal. */
    @Test
    void aTankThatGetsMoreThanUsualDoesNotFall() {
        Drill drill = play(aFishRoom(unbled("b")).build(), scene(new Failing.CheckValveStuck(new OutletId("o3")), 8));
        Course course = tank(drill, "t3").courses().orElseThrow().cautious();

        assertThat(course.lowestGPerM3()).isGreaterThan(course.startGPerM3() - ROUNDING_G_PER_M3);
        assertThat(tank(drill, "t2").courses().orElseThrow().cautious().lowestGPerM3())
                .isLessThan(tank(drill, "t2").courses().orElseThrow().cautious().startGPerM3() - 0.5);
    }

    @Test
    void itRisesAgainWhenTheAirIsBack() {
        Drill drill = play(
                roomOf(stocked(), Backup.NONE),
                new Scene(new Failing.Mains(), OptionalDouble.of(4 * HOUR_S), 200 * HOUR_S));
        Course course = tank(drill, "t").courses().orElseThrow().likely();

        assertThat(course.atS(4 * HOUR_S)).isEqualTo(course.lowestGPerM3(), within(ROUNDING_G_PER_M3));
        assertThat(course.endGPerM3()).isCloseTo(course.startGPerM3(), within(0.01));
    }

    /** A filter on a circuit of its own goes on when the blower's trips. */
    @Test
    void whatGoesOnStirringKeepsItsTank() {
        Stirrer filter = new Stirrer(
                new StirrerId("s"),
                new TankId("t1"),
                Stirrer.Kind.HANG_ON_FILTER,
                OptionalDouble.empty(),
                Optional.of(new CircuitId("two")));
        Room bare = aFishRoom(unbled("b").circuit("one"))
                .with(new Circuit(new CircuitId("one"), "one", Optional.empty(), Optional.empty()))
                .with(new Circuit(new CircuitId("two"), "two", Optional.empty(), Optional.empty()))
                .build();
        Scene trips = scene(new Failing.CircuitTrips(new CircuitId("one")), 8);
        Course still = tank(play(bare, trips), "t1").courses().orElseThrow().cautious();
        Course stirred = tank(play(bare.withStirrers(List.of(filter)), trips), "t1")
                .courses()
                .orElseThrow()
                .cautious();

        assertThat(stirred.startGPerM3()).isCloseTo(still.startGPerM3(), within(ROUNDING_G_PER_M3));
        assertThat(stirred.endGPerM3()).isGreaterThan(still.endGPerM3() + 0.5);
    }
}
