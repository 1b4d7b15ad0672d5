package lungfish.outage;

import static lungfish.outage.OutageRooms.HOUR_S;
import static lungfish.outage.OutageRooms.TARGET_M3_PER_S;
import static lungfish.outage.OutageRooms.aFishRoom;
import static lungfish.outage.OutageRooms.air;
import static lungfish.outage.OutageRooms.battery;
import static lungfish.outage.OutageRooms.batteryW;
import static lungfish.outage.OutageRooms.plan;
import static lungfish.outage.OutageRooms.play;
import static lungfish.outage.OutageRooms.unbled;
import static lungfish.outage.OutageRooms.usableJ;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.backup.BatteryRuntime;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.room.Backup;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** What runs when the mains fail. */
final class MainsFailTest {
    /** Where a battery is empty is found to a millisecond. */
    private static final double ROUNDING_S = 0.01;

    private static final double ROUNDING = 1e-9;

    private static Room with(Backup backup) {
        return aFishRoom(unbled("b")).with(backup).build();
    }

    private static double watts(Plan plan) {
        return plan.duty().orElseThrow().candidate().tired().watts();
    }

    private static double essentialWatts(Plan plan) {
        return plan.essential().orElseThrow().running().watts();
    }

    private static List<Power> powers(Drill drill) {
        return drill.stretches().stream().map(Stretch::power).toList();
    }

    private static List<Double> ends(Drill drill) {
        return drill.stretches().stream().map(Stretch::toS).toList();
    }

    @Test
    void withoutAnythingNoOutletGetsAirUntilTheEnd() {
        Drill drill = play(with(Backup.NONE), Scene.mains(24));

        assertThat(drill.stretches()).hasSize(1);
        assertThat(drill.stretches().get(0).power()).isEqualTo(Power.NONE);
        assertThat(drill.stretches().get(0).outletsOn()).isZero();
        assertThat(drill.backS()).isEmpty();
    }

    /** By hand: 80 % of 12.8 V · 20 Ah = 737 280 J, drawn at (the blower's watts)/0.9 + 5, gentler than in the rated 5 h. */
    @Test
    void aBatteryCarriesAllUntilItIsEmpty() {
        Plan plan = plan(with(battery(20)));
        Drill drill = play(plan, Scene.mains(24));
        double untilS = usableJ(20) / batteryW(watts(plan));

        assertThat(powers(drill)).containsExactly(Power.BATTERY, Power.NONE);
        assertThat(drill.stretches().get(0).toS()).isCloseTo(untilS, within(ROUNDING_S));
        assertThat(drill.stretches().get(0).outletsOn()).isEqualTo(4);
        assertThat(drill.stretches().get(0).chargeFrom()).isEqualTo(1);
        assertThat(drill.stretches().get(1).chargeFrom()).isZero();
    }

    @Test
    void itsRuntimeIsThatOfThePlan() {
        Plan plan = plan(with(battery(20)));

        assertThat(play(plan, Scene.mains(24)).stretches().get(0).toS())
                .isCloseTo(
                        BatteryRuntime.runtimeS(plan.room(), DemoPlans.CATALOGUE, watts(plan))
                                .orElseThrow(),
                        within(ROUNDING_S));
    }

    /** By hand: what all of them draw in the first half hour is gone, and the essential ones share the rest. */
    @Test
    void whoNoticesShedsAndTheEssentialOnesLastLonger() {
        Backup backup = battery(20)
                .withShedding(Optional.of(new Backup.Shedding("the ball valve", "whoever is at home")))
                .withNoticeS(OptionalDouble.of(1800));
        Plan plan = plan(with(backup));
        Drill drill = play(plan, Scene.mains(24));
        double leftJ = usableJ(20) - 1800 * batteryW(watts(plan));
        double untilS = 1800 + leftJ / batteryW(essentialWatts(plan));

        assertThat(powers(drill)).containsExactly(Power.BATTERY, Power.BATTERY, Power.NONE);
        assertThat(ends(drill).get(0)).isEqualTo(1800);
        assertThat(ends(drill).get(1)).isCloseTo(untilS, within(ROUNDING_S));
        Stretch shed = drill.stretches().get(1);
        assertThat(shed.state().essentialsOnly()).isTrue();
        assertThat(air(drill, shed, "o1")).isCloseTo(TARGET_M3_PER_S, within(ROUNDING));
        assertThat(air(drill, shed, "o3")).isZero();
    }

    /** By hand: noticed after 1 h and ready 10 min later, 2 h of fuel. */
    @Test
    void aGeneratorCarriesAllFromWhenItIsReadyForAsLongAsItsFuelLasts() {
        Backup backup = Backup.NONE
                .withNoticeS(OptionalDouble.of(HOUR_S))
                .withGenerator(Optional.of(
                        new Backup.Generator(OptionalDouble.of(900), OptionalDouble.of(7200), OptionalDouble.of(600))));
        Drill drill = play(with(backup), Scene.mains(24));

        assertThat(powers(drill)).containsExactly(Power.NONE, Power.GENERATOR, Power.NONE);
        assertThat(ends(drill)).containsExactly(4200.0, 11_400.0, 24 * HOUR_S);
        assertThat(drill.stretches().get(1).outletsOn()).isEqualTo(4);
    }

    @Test
    void aGeneratorThatCannotStartTheBlowerIsNotCountedOn() {
        Backup backup = Backup.NONE.withGenerator(
                Optional.of(new Backup.Generator(OptionalDouble.of(5), OptionalDouble.of(7200), OptionalDouble.of(0))));

        assertThat(powers(play(with(backup), Scene.mains(24)))).containsExactly(Power.NONE);
    }

    @Test
    void anInverterThatCannotStartTheBlowerCarriesNothing() {
        Backup.Inverter weak = new Backup.Inverter(
                OptionalDouble.of(0.9),
                OptionalDouble.of(5),
                OptionalDouble.of(300),
                OptionalDouble.of(5),
                Optional.empty());

        assertThat(powers(play(with(battery(20).withInverter(Optional.of(weak))), Scene.mains(24))))
                .containsExactly(Power.NONE);
    }

    /** Its fuel over, what the battery still holds goes on; the generator took over before it was empty. */
    @Test
    void afterTheGeneratorTheBatteryGoesOnWithWhatItHas() {
        Backup backup = battery(20)
                .withNoticeS(OptionalDouble.of(1800))
                .withGenerator(Optional.of(
                        new Backup.Generator(OptionalDouble.of(900), OptionalDouble.of(7200), OptionalDouble.of(0))));
        Plan plan = plan(with(backup));
        Drill drill = play(plan, Scene.mains(24));

        assertThat(powers(drill)).containsExactly(Power.BATTERY, Power.GENERATOR, Power.BATTERY, Power.NONE);
        assertThat(ends(drill).get(2)).isCloseTo(7200 + usableJ(20) / batteryW(watts(plan)), within(ROUNDING_S));
    }

    /**
     * The class "battery-pump-small" gives 1 L/min for 20 h. By hand: three give more than the 2 · 0.8 that the essential
     * outlets ask for, so each gets its target; the others nothing.
     */
    @Test
    void batteryPumpsKeepTheEssentialOutletsGoing() {
        Backup backup = Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", 3)));
        Drill drill = play(with(backup), Scene.mains(24));
        Stretch first = drill.stretches().get(0);

        assertThat(ends(drill)).containsExactly(20 * HOUR_S, 24 * HOUR_S);
        assertThat(air(drill, first, "o1")).isCloseTo(TARGET_M3_PER_S, within(ROUNDING));
        assertThat(air(drill, first, "o2")).isCloseTo(TARGET_M3_PER_S, within(ROUNDING));
        assertThat(first.outletsOn()).isEqualTo(2);
        assertThat(drill.stretches().get(1).outletsOn()).isZero();
    }

    /** By hand: one pump of 1 L/min for two outlets that ask for 0.8 each gives each 0.5. */
    @Test
    void oneBatteryPumpSharesWhatItGives() {
        Backup backup = Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", 1)));
        Drill drill = play(with(backup), Scene.mains(24));

        assertThat(air(drill, drill.stretches().get(0), "o1")).isCloseTo(0.5 / 60_000, within(ROUNDING));
    }

    @Test
    void batteryPumpsWaitWhileTheBatteryCarries() {
        Backup backup = battery(20).withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", 3)));
        Plan plan = plan(with(backup));
        Drill drill = play(plan, Scene.mains(48));
        double emptyS = usableJ(20) / batteryW(watts(plan));

        assertThat(drill.stretches().get(0).state().batteryPumps()).isFalse();
        assertThat(drill.stretches().get(1).state().batteryPumps()).isTrue();
        assertThat(ends(drill).get(1)).isCloseTo(emptyS + 20 * HOUR_S, within(ROUNDING_S));
    }

    /** By hand: in an hour goes 3600 · (W/0.9 + 5) of 737 280 J; then 95 % of the 20 W of the charger come back. */
    @Test
    void onceTheMainsAreBackAllIsWellAndTheBatteryIsChargedAgain() {
        Plan plan = plan(with(battery(20).withChargerW(OptionalDouble.of(20))));
        Drill drill = play(plan, new Scene(new Failing.Mains(), OptionalDouble.of(HOUR_S), 2 * HOUR_S));
        double left = 1 - HOUR_S * batteryW(watts(plan)) / usableJ(20);

        assertThat(powers(drill)).containsExactly(Power.BATTERY, Power.MAINS);
        assertThat(drill.backS()).hasValue(HOUR_S);
        Stretch back = drill.stretches().get(1);
        assertThat(back.state()).isEqualTo(State.WELL);
        assertThat(back.chargeFrom()).isCloseTo(left, within(1e-6));
        assertThat(back.chargeTo()).isCloseTo(Math.min(1, left + 0.95 * 20 * HOUR_S / usableJ(20)), within(1e-6));
    }

    /** No battery is short enough that a stretch of nothing stands between two of the battery. */
    @Test
    void aFullBatteryGoesOnAtEverySwitch() {
        Backup backup = battery(40)
                .withShedding(Optional.of(new Backup.Shedding("the ball valve", "whoever is at home")))
                .withNoticeS(OptionalDouble.of(900));

        assertThat(powers(play(with(backup), Scene.mains(3)))).containsExactly(Power.BATTERY, Power.BATTERY);
    }

    /** Rooms of which nothing is said: eight hours until it is noticed, fuel for eight hours, said among what is assumed. */
    @Test
    void whatPeopleDoIsAssumedVisibly() {
        Drill drill = play(with(Backup.NONE.withGenerator(Optional.of(Backup.Generator.UNKNOWN))), Scene.mains(24));

        assertThat(ends(drill)).containsExactly(8.5 * HOUR_S, 16.5 * HOUR_S, 24 * HOUR_S);
        assertThat(drill.assumptions())
                .extracting(each -> each.key().name())
                .containsExactlyInAnyOrder("ALARM_OXYGEN", "DANGER_OXYGEN", "NOTICE", "READY", "GENERATOR_FUEL");
    }
}
