package lungfish.rescue;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aMain;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import lungfish.backup.BatteryRuntime;
import lungfish.catalogue.Catalogue;
import lungfish.outage.Drills;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.TankBuilder;
import lungfish.room.Wishes;
import lungfish.roomfile.RoomReader;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;

/** Small rooms of which the cheapest way out is known beforehand. */
final class RescuingTest {
    private static final Catalogue CATALOGUE = DemoPlans.CATALOGUE;
    private static final double HOUR_S = 3600;
    private static final double L_PER_MIN = 1e-3 / 60;
    private static final double CENT = 0.005;

    /** Prices of the catalogue: 12 V · 100 Ah · 150 a kWh, and the inverter of 300 W. */
    private static final double LEAD_BATTERY = 1.2 * 150;

    private static final double INVERTER_300 = 60;
    private static final double BATTERY_PUMP_SMALL = 18;
    private static final double ALARM = 38;
    private static final double CHANGEOVER_RELAY = 70;

    /** Linear diaphragm blower, 30 L/min: (90 + 160) / 2. */
    private static final double BLOWER = 125;

    private static Room room(double wantedH, Backup backup, TankBuilder... tanks) {
        return aRoom().with(aMain("main", false, new Point(0.2, 0.2, 2.2), new Point(4, 0.2, 2.2)))
                .with(aBlower("central").machine("linear-diaphragm-30").at(0.2, 0.2, 2.1))
                .with(Wishes.NONE.withRuntimeS(OptionalDouble.of(wantedH * HOUR_S)))
                .with(backup)
                .with(aRack("A").at(0.4, 0.6).shelf(0.4, tanks))
                .build();
    }

    /** Lives so long without air; its outlet is to be kept going. */
    private static TankBuilder essential(String id, double xM, double livesH) {
        return aTank(id)
                .at(xM)
                .survivalS(livesH * HOUR_S)
                .with(anOutlet(id + "-a")
                        .device("sponge-medium")
                        .depthM(0.2)
                        .targetM3PerS(L_PER_MIN)
                        .essential());
    }

    private static TankBuilder other(String id, double xM, double livesH) {
        return aTank(id)
                .at(xM)
                .survivalS(livesH * HOUR_S)
                .with(anOutlet(id + "-a").device("sponge-medium").depthM(0.2).targetM3PerS(L_PER_MIN));
    }

    /** Somebody is there after half an hour, and mends a blower half an hour later: within what every tank lives. */
    private static Backup soonMended() {
        return Backup.NONE.withNoticeS(OptionalDouble.of(0.5 * HOUR_S)).withMendS(OptionalDouble.of(0.5 * HOUR_S));
    }

    private static Rescue rescue(Room room) {
        return Rescuing.of(new Planner(CATALOGUE).plan(room), CATALOGUE, Progress.UNHEARD)
                .orElseThrow();
    }

    @Test
    void aRoomThatOutlivesEveryHazardNeedsNothing() {
        Rescue rescue = rescue(room(2, soonMended(), essential("a", 0, 3)));

        assertThat(rescue.all().isNothing()).isTrue();
        assertThat(rescue.all().keepsAll()).isTrue();
        assertThat(rescue.now().outcome().mains().safe()).isEqualTo(1);
    }

    @Test
    void oneBatteryPumpKeepsTheEssentialTankAndABatteryKeepsAll() {
        // 8 h without the mains, and both live 2 h: the pump of 1 L/min runs 20 h for one outlet of 1 L/min
        Rescue rescue = rescue(room(8, soonMended(), essential("a", 0, 2), other("b", 0.7, 2)));

        assertThat(rescue.essential().orElseThrow().set().price()).isCloseTo(BATTERY_PUMP_SMALL, within(CENT));
        assertThat(rescue.essential().orElseThrow().set().means())
                .singleElement()
                .isInstanceOf(Means.BatteryPumps.class);
        assertThat(rescue.all().set().price()).isCloseTo(LEAD_BATTERY + INVERTER_300, within(CENT));
        assertThat(rescue.now().outcome().mains().safe()).isZero();
        assertThat(rescue.all().outcome().mains().safe()).isEqualTo(2);
        assertThat(rescue.essential().orElseThrow().outcome().mains().safe()).isEqualTo(1);
    }

    @Test
    void anAlarmWithAHandIsCheaperThanAStandbyThatStartsItself() {
        // unnoticed for 8 h; with an alarm a hand is there after 15 min + 30 min, within the hour that the tank lives
        Rescue rescue = rescue(room(0.5, Backup.NONE, other("a", 0, 1)));

        assertThat(rescue.all().set().price()).isCloseTo(ALARM + BLOWER, within(CENT));
        assertThat(rescue.all().set().things()).isEqualTo(2);
    }

    @Test
    void whatLivesLessThanAHandTakesNeedsAStandbyThatStartsItself() {
        Rescue rescue = rescue(room(0.5, Backup.NONE, other("a", 0, 0.7)));

        assertThat(rescue.all().set().price()).isCloseTo(CHANGEOVER_RELAY + BLOWER, within(CENT));
        assertThat(rescue.all().set().means()).singleElement().isInstanceOf(Means.Standby.class);
    }

    @Test
    void aStandbyThatTheRoomHasOnlyWantsWhatStartsIt() {
        Room room = room(0.5, Backup.NONE, other("a", 0, 0.7));
        Room with = room.withBlowers(Stream.concat(
                        room.blowers().stream(),
                        Stream.of(aBlower("spare")
                                .standby()
                                .machine("linear-diaphragm-30")
                                .at(0.6, 0.2, 2.1)
                                .build()))
                .toList());

        assertThat(rescue(with).all().set().price()).isCloseTo(CHANGEOVER_RELAY, within(CENT));
    }

    /**
     * One battery carries the blower for so long; the tank lives 36 minutes after that, and not a minute longer. It takes 42
     * minutes until somebody has started a generator.
     */
    @Test
    void aBatteryThatJustLastsIsEnoughAndAMinuteLaterItTakesTwo() {
        Backup soon =
                Backup.NONE.withNoticeS(OptionalDouble.of(0.2 * HOUR_S)).withMendS(OptionalDouble.of(0.2 * HOUR_S));
        double livesH = 0.6;
        double justH = (oneLeadBatteryS() + livesH * HOUR_S - 60) / HOUR_S;

        assertThat(batteries(rescue(room(justH, soon, other("a", 0, livesH))))).isEqualTo(1);
        assertThat(batteries(rescue(room(justH + 2.0 / 60, soon, other("a", 0, livesH)))))
                .isEqualTo(2);
    }

    private static int batteries(Rescue rescue) {
        Means.Battery battery = (Means.Battery) rescue.all().set().means().get(0);
        assertThat(battery.kind().id()).isEqualTo("lead-flooded");
        return battery.count();
    }

    private static double oneLeadBatteryS() {
        Room room = room(8, soonMended(), other("a", 0, 1.5));
        Plan plan = new Planner(CATALOGUE).plan(room);
        Means.Battery batteries = new Means.Battery(
                CATALOGUE.battery("lead-flooded").orElseThrow(),
                1,
                100 * HOUR_S,
                12,
                CATALOGUE.backupGear("inverter-300"));
        double watts = Drills.of(plan, CATALOGUE).orElseThrow().load().runningW();
        return BatteryRuntime.runtimeS(batteries.in(room), CATALOGUE, watts).orElseThrow();
    }

    @Test
    void aTankThatLivesNoTimeWithoutAirIsLostUntilAStandbyRunsAndIsNamed() {
        // the battery pump is switched on by hand when a blower stops, and a relay is too small for nothing here
        Room room = room(0.5, Backup.NONE, other("a", 0, 0.01), other("b", 0.7, 40));
        Catalogue none = withoutChangeover();
        Rescue rescue = Rescuing.of(new Planner(none).plan(room), none, Progress.UNHEARD)
                .orElseThrow();

        assertThat(rescue.all().keepsAll()).isFalse();
        assertThat(rescue.all().lost()).singleElement().satisfies(lost -> {
            assertThat(lost.vessel().tank().id().text()).isEqualTo("a");
            assertThat(lost.hazard()).isEqualTo(Hazard.BLOWER);
            assertThat(lost.why()).isEqualTo(Lost.Why.NOT_IN_TIME);
            assertThat(lost.dangerS()).isCloseTo(36, within(1e-6)); // 0.01 h
        });
        assertThat(rescue.unfit()).extracting(Unfit::kind).hasSize(1);
    }

    private static Catalogue withoutChangeover() {
        return new Catalogue(
                CATALOGUE.devices(),
                CATALOGUE.airlines(),
                CATALOGUE.valves(),
                CATALOGUE.checkValves(),
                CATALOGUE.pipes(),
                CATALOGUE.fittings(),
                CATALOGUE.blowers(),
                CATALOGUE.batteries(),
                CATALOGUE.accessories(),
                CATALOGUE.tankSizes(),
                CATALOGUE.backupGear().stream()
                        .filter(each -> !each.id().startsWith("changeover"))
                        .toList(),
                CATALOGUE.building(),
                CATALOGUE.services(),
                CATALOGUE.assumed());
    }

    @Test
    void moreFishThanTheAirBearsAreLostBeforeAnythingFails() {
        // 2 kg of fish in 54 L take far more than a litre of air a minute brings
        Room room = room(
                0.5, soonMended(), aTank("a").fish(20, 0.1).with(anOutlet("a-a").depthM(0.2)));

        assertThat(rescue(room).all().lost())
                .singleElement()
                .extracting(Lost::why)
                .isEqualTo(Lost.Why.SHORT_BEFORE);
    }

    @Test
    void aSetIsPutIntoTheRoomAsOneStepAndCanBeSaved() {
        Room room = room(8, Backup.NONE, essential("a", 0, 2), other("b", 0.7, 2));
        Rescue rescue = rescue(room);

        Room kept = rescue.all().set().added(room, "Add").edit().orElseThrow().of(room);

        assertThat(rescue(kept).all().isNothing()).isTrue();
        assertThat(kept.blowers(Blower.Role.STANDBY)).hasSize(1);
        assertThat(new RoomReader(CATALOGUE).read(RoomWriter.bytes(kept)).value())
                .contains(kept);
    }

    @Test
    void whoeverWaitsMayStopIt() {
        Plan plan = new Planner(CATALOGUE).plan(room(8, Backup.NONE, essential("a", 0, 2)));
        Progress stops = (done, of) -> {
            throw new CancellationException();
        };

        assertThatThrownBy(() -> Rescuing.of(plan, CATALOGUE, stops)).isInstanceOf(CancellationException.class);
    }
}
