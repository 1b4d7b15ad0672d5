package lungfish.standing;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.room.Backup;
import lungfish.room.Backup.Alarm;
import lungfish.room.Backup.Battery;
import lungfish.room.Backup.Generator;
import lungfish.room.Backup.Standby;
import lungfish.room.BatteryId;
import lungfish.room.RoomBuilder;
import org.junit.jupiter.api.Test;

/** Four tanks under one blower, or under small pumps. Assumed: 20 000 h, 8 h to notice, 72 h to mend, 2 mains failures of 3 h. */
final class RedundancyTest {
    private static final double HOUR_S = 3600;
    private static final double ROUNDING = 1e-9;
    private static final double HUNDREDTH_H = 0.005;

    /** By hand: 80 h in 20 080 h, of 8760: 34.90 h a year; 8760/20 000 failures; e^(−0.438) = 0.6453; 2 · 3 h by the mains. */
    @Test
    void oneBlowerTakesEveryTankUntilItIsReplaced() {
        Standing one = way(Way.ONE_BLOWER, tanks().with(aBlower("b")));
        assertThat(one.drawn()).isTrue();
        assertThat(one.airlessSPerYear() / HOUR_S).isCloseTo(34.90, within(HUNDREDTH_H));
        assertThat(one.failuresPerYear()).isCloseTo(0.438, within(ROUNDING));
        assertThat(one.quietYear()).isCloseTo(0.6453, within(5e-5));
        assertThat(one.loss()).isEqualTo(new Loss(4, 0, 1, 80 * HOUR_S));
        assertThat(one.mainsSPerYear() / HOUR_S).isCloseTo(6, within(ROUNDING));
        assertThat(one.allAirlessSPerYear() / HOUR_S).isCloseTo(40.90, within(HUNDREDTH_H));
    }

    /** By hand: 8 h until somebody notices and half an hour to start it. */
    @Test
    void aStandbyByHandWaitsForAHand() {
        Standing standby = way(
                Way.STANDBY_BY_HAND,
                tanks().with(aBlower("b")).with(aBlower("s").standby()));
        assertThat(standby.drawn()).isTrue();
        assertThat(standby.machines()).isEqualTo(2);
        assertThat(standby.loss()).isEqualTo(new Loss(4, 0, 1, 8.5 * HOUR_S));
        assertThat(standby.airlessSPerYear() / HOUR_S).isCloseTo(4.494, within(HUNDREDTH_H));
    }

    @Test
    void aStandbyThatStartsByItselfTakesNoTank() {
        Backup automatic =
                Backup.NONE.withStandby(Optional.of(new Standby(Standby.Start.AUTOMATIC, OptionalDouble.of(20))));
        RoomBuilder room =
                tanks().with(aBlower("b")).with(aBlower("s").standby()).with(automatic);
        Standing standby = way(Way.STANDBY_BY_ITSELF, room);
        assertThat(standby.drawn()).isTrue();
        assertThat(standby.loss()).isEqualTo(new Loss(0, 0, 1, 20));
        assertThat(way(Way.STANDBY_BY_HAND, room).drawn()).isFalse();
        assertThat(standby.airlessSPerYear())
                .isLessThan(way(Way.STANDBY_BY_HAND, room).airlessSPerYear());
    }

    /** An alarm of low pressure rings when no air is left, not when half of it is: most of the pressure is depth. */
    @Test
    void anAlarmHelpsWhereAllTheAirIsGone() {
        Backup alarm = Backup.NONE.withAlarm(Optional.of(new Alarm(OptionalDouble.empty())));
        assertThat(way(Way.ONE_BLOWER, tanks().with(alarm)).loss().forS()).isEqualTo(72.25 * HOUR_S);
        assertThat(way(Way.SHARED, tanks().with(alarm)).loss().forS()).isEqualTo(80 * HOUR_S);
        assertThat(way(Way.SMALL_PUMPS, tanks().with(alarm)).loss().forS()).isEqualTo(80 * HOUR_S);
    }

    @Test
    void twoHalvesLeaveEveryTankHalfItsAir() {
        Standing halves = way(Way.SHARED, tanks().with(aBlower("b").count(2)));
        assertThat(halves.drawn()).isTrue();
        assertThat(halves.loss()).isEqualTo(new Loss(0, 4, 0.5, 80 * HOUR_S));
        assertThat(halves.shortSPerYear() / HOUR_S).isCloseTo(69.66, within(HUNDREDTH_H));
        assertThat(halves.airlessSPerYear() / HOUR_S).isCloseTo(0.14, within(HUNDREDTH_H));
    }

    @Test
    void threeThatShareWithAStandbyAreWhatTheRoomHas() {
        Standing standby = way(
                Way.STANDBY_BY_HAND,
                tanks().with(aBlower("b").count(3)).with(aBlower("s").standby()));
        assertThat(standby.machines()).isEqualTo(4);
        assertThat(standby.loss().less()).isEqualTo(4);
        assertThat(standby.loss().leftShare()).isCloseTo(2.0 / 3, within(ROUNDING));
    }

    /** P feeds T1 and T2; two machines of Q feed T3; R and S feed T4. */
    @Test
    void aSmallPumpTakesTheTanksThatHangOnItAlone() {
        Standing pumps = way(Way.SMALL_PUMPS, pumped());
        assertThat(pumps.drawn()).isTrue();
        assertThat(pumps.machines()).isEqualTo(5);
        assertThat(pumps.loss()).isEqualTo(new Loss(2, 0, 1, 80 * HOUR_S));
        assertThat(pumps.airlessSPerYear() / HOUR_S).isCloseTo(34.90, within(HUNDREDTH_H));
        assertThat(pumps.failuresPerYear()).isCloseTo(5 * 0.438, within(ROUNDING));
        assertThat(pumps.tanks(Common.Cause.PIPE)).isZero();
    }

    /** P and Q on one circuit, R on another, of S nobody says: the first takes T1 to T3; the second T4, if S hangs on it. */
    @Test
    void aCircuitTakesAllThatHangOnIt() {
        assertThat(way(Way.SMALL_PUMPS, pumped()).tanks(Common.Cause.CIRCUIT)).isEqualTo(3);
    }

    @Test
    void aPumpOfUnknownCircuitIsCountedToThatWhichTakesMost() {
        RoomBuilder room = tanks().with(aBlower("P").today("o1", "o2").circuit("c1"))
                .with(aBlower("Q").today("o3"));
        assertThat(way(Way.SMALL_PUMPS, room).tanks(Common.Cause.CIRCUIT)).isEqualTo(3);
    }

    @Test
    void whereNobodySaysWhatPumpsFeedEachTankIsSupposedToHaveOne() {
        Standing pumps = way(Way.SMALL_PUMPS, tanks());
        assertThat(pumps.drawn()).isFalse();
        assertThat(pumps.machines()).isEqualTo(4);
        assertThat(pumps.loss().tanks()).isEqualTo(1);
        assertThat(pumps.tanks(Common.Cause.CIRCUIT)).isEqualTo(4);
    }

    @Test
    void onlyAStandbyOnACircuitOfItsOwnOutlivesTheCircuit() {
        Backup automatic =
                Backup.NONE.withStandby(Optional.of(new Standby(Standby.Start.AUTOMATIC, OptionalDouble.empty())));
        for (String circuit : List.of("c1", "c2")) {
            Standing standby = way(
                    Way.STANDBY_BY_ITSELF,
                    tanks().with(automatic)
                            .with(aBlower("b").circuit("c1"))
                            .with(aBlower("s").standby().circuit(circuit)));
            assertThat(standby.tanks(Common.Cause.CIRCUIT)).isEqualTo(circuit.equals("c1") ? 4 : 0);
            assertThat(standby.tanks(Common.Cause.PIPE)).isEqualTo(4);
            assertThat(standby.tanks(Common.Cause.MAINS)).isEqualTo(4);
        }
    }

    /** By hand: 12.8 V · 100 Ah, 0.8 of it, 25 °C, new, 60 W at 0.88 and 10 W idle: 3.6864 MJ/78.18 W = 13.10 h; 6 · e^(−13.10/3) = 0.076 h. */
    @Test
    void aBatteryTakesTheMainsOffTheBlower() {
        RoomBuilder room = tanks().with(aBlower("b")).with(withBattery());
        assertThat(way(Way.ONE_BLOWER, room).mainsSPerYear() / HOUR_S).isCloseTo(0.076, within(0.0005));
        assertThat(way(Way.SMALL_PUMPS, room).mainsSPerYear() / HOUR_S).isCloseTo(6, within(ROUNDING));
    }

    @Test
    void aBatteryOfWhoseLoadNobodyKnowsIsNotCredited() {
        StandingAnswer answer = Redundancy.of(
                tanks().with(withBattery()).build(),
                CatalogueFiles.load(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertThat(answer.ways()).allMatch(each -> each.mainsSPerYear() > 5.9 * HOUR_S);
    }

    /** By hand: from 8.5 h for 8 h: 6 · (1 − e^(−8.5/3) + e^(−16.5/3)) = 5.672 h: who sleeps through it has little of it. */
    @Test
    void aGeneratorHelpsOnlyWhenSomebodyHasStartedIt() {
        Backup generator = Backup.NONE.withGenerator(Optional.of(Generator.UNKNOWN));
        assertThat(way(Way.ONE_BLOWER, tanks().with(generator)).mainsSPerYear() / HOUR_S)
                .isCloseTo(5.672, within(0.0005));
        Backup weak = Backup.NONE.withGenerator(Optional.of(Generator.UNKNOWN.withRatedW(OptionalDouble.of(50))));
        assertThat(way(Way.ONE_BLOWER, tanks().with(weak)).mainsSPerYear() / HOUR_S)
                .isCloseTo(6, within(ROUNDING));
    }

    @Test
    void whatTheRoomSaysIsTakenAndTheRestIsAssumedVisibly() {
        Backup said = Backup.NONE.withNoticeS(OptionalDouble.of(HOUR_S)).withMendS(OptionalDouble.of(9 * HOUR_S));
        StandingAnswer answer = answer(tanks().with(said));
        assertThat(answer.rates().backS()).isEqualTo(10 * HOUR_S);
        assertThat(answer.assumptions())
                .extracting(Assumption::key)
                .containsExactlyInAnyOrder(
                        Assumable.BLOWER_MTBF, Assumable.READY, Assumable.MAINS_FAILURES, Assumable.MAINS_OUTAGE);
    }

    @Test
    void racksThatAreOnlyPlannedDoNotCount() {
        RoomBuilder room =
                tanks().with(aRack("B").planned().shelf(0.5, aTank("T9").with(anOutlet("o9"))));
        assertThat(answer(room).tanks()).isEqualTo(4);
        assertThat(way(Way.SMALL_PUMPS, room).machines()).isEqualTo(4);
    }

    private static RoomBuilder tanks() {
        return aRoom().with(aRack("A")
                .shelf(
                        0.5,
                        aTank("T1").with(anOutlet("o1")),
                        aTank("T2").with(anOutlet("o2")),
                        aTank("T3").with(anOutlet("o3")),
                        aTank("T4").with(anOutlet("o4")).with(anOutlet("o5"))));
    }

    private static RoomBuilder pumped() {
        return tanks().with(aBlower("P").today("o1", "o2").circuit("c1"))
                .with(aBlower("Q").today("o3").count(2).circuit("c1"))
                .with(aBlower("R").today("o4").circuit("c2"))
                .with(aBlower("S").today("o5"));
    }

    private static Backup withBattery() {
        return Backup.NONE.withBatteries(List.of(new Battery(
                new BatteryId("B"),
                "lifepo4",
                1,
                12.8,
                100 * HOUR_S,
                OptionalDouble.of(298.15),
                OptionalDouble.of(1),
                Optional.empty())));
    }

    private static Standing way(Way way, RoomBuilder room) {
        return answer(room).of(way);
    }

    private static StandingAnswer answer(RoomBuilder room) {
        return Redundancy.of(room.build(), CatalogueFiles.load(), OptionalDouble.of(60), OptionalDouble.of(20));
    }
}
