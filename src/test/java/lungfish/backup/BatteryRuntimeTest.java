package lungfish.backup;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static lungfish.room.Rooms.anOutlet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Why;
import lungfish.room.Backup;
import lungfish.room.Backup.Battery;
import lungfish.room.Backup.Inverter;
import lungfish.room.BatteryId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Room;
import lungfish.room.RoomBuilder;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class BatteryRuntimeTest {
    private static final double HOUR_S = 3600;
    private static final double ROUNDING_S = 1e-6;
    private static final double THREE_DIGITS_PERCENT = 0.1;
    private static final Load SIXTY_WATTS = new Load(60, 80, OptionalDouble.of(25));

    private final Catalogue catalogue = CatalogueFiles.load();

    /**
     * By hand: 12.8 V · 100 Ah · 3600 = 4.608 MJ; depth 0.8, age 0.9 and 25 °C leave 3.318 MJ; 60 W at 0.9 and 5 W idle draw
     * 71.67 W, gentler than the 5 h rate: 46 293 s.
     */
    @Test
    void aGentleLoadTakesWhatDepthAgeAndInverterLeave() {
        Backup backup = backup(battery("lifepo4", 1, 12.8, 100, 298.15, 0.9));
        assertThat(runtimeS(backup, SIXTY_WATTS)).isCloseTo(46_293, withinPercentage(THREE_DIGITS_PERCENT));
    }

    /**
     * By hand: 12 V · 50 Ah = 2.16 MJ; depth 0.5 leaves 1.08 MJ; 100 W at 0.9 and 5 W idle draw 116.1 W. All of it would go
     * in 18 602 s, 0.2584 of the rated 20 h; 0.2584^0.15 = 0.8164, so 1.08 MJ · 0.8164 / 116.1 W = 7593 s.
     */
    @Test
    void aHardLoadTakesLessOutOfLeadAcid() {
        Backup backup = backup(battery("lead-sealed", 1, 12, 50, 298.15, 1));
        assertThat(runtimeS(backup, new Load(100, 100, OptionalDouble.empty())))
                .isCloseTo(7593, withinPercentage(THREE_DIGITS_PERCENT));
    }

    /**
     * By hand: at 10 °C (factor 1.19, IEEE Std 485) and with 0.8 of its charge left it is 0.67227 of a new one: all of that
     * would go in 12 506 s, 0.17370 of the rated 20 h; 0.17370^0.15 = 0.76907, so 1.08 MJ · 0.67227 · 0.76907 / 116.1 W =
     * 4809 s.
     */
    @Test
    void aColdWornBatteryIsASmallerOneAndFeelsTheLoadHarder() {
        Load load = new Load(100, 100, OptionalDouble.empty());
        double worn = runtimeS(backup(battery("lead-sealed", 1, 12, 50, 283.15, 0.8)), load);
        assertThat(worn).isCloseTo(4809, withinPercentage(THREE_DIGITS_PERCENT));
        double smaller = runtimeS(backup(battery("lead-sealed", 1, 12, 50 * 0.8 / 1.19, 298.15, 1)), load);
        assertThat(worn).isCloseTo(smaller, within(ROUNDING_S));
    }

    /** Users report about 65 % at 80 W on an inverter of 5 kW: one of which only the rating is known is not told better. */
    @Test
    void aLargeInverterIsPoorAtALightLoad() {
        Inverter large = new Inverter(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(5000),
                OptionalDouble.empty(),
                Optional.empty());
        Backup backup = withInverter(backup(battery("lifepo4", 1, 12.8, 100, 298.15, 1)), large);
        double usableJ = 0.8 * 12.8 * 100 * HOUR_S;
        double efficiency = 80 * runtimeS(backup, load(80)) / usableJ;
        assertThat(efficiency).isBetween(0.5, 0.65);
    }

    @Test
    void anInverterThatKeepsSilentAboutSurgeOrWaveIsAsked() {
        Inverter silent = new Inverter(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(70),
                OptionalDouble.empty(),
                Optional.of(Inverter.Wave.SINE));
        Backup backup = backup(battery("lifepo4", 1, 12.8, 100, 298, 1));
        assertThat(codes(roomOf(withInverter(backup, silent)))).contains(Code.INVERTER_UNSAID);
        Inverter strong = new Inverter(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(80),
                OptionalDouble.empty(),
                Optional.of(Inverter.Wave.SINE));
        assertThat(codes(roomOf(withInverter(backup, strong)))).doesNotContain(Code.INVERTER_UNSAID);
        Inverter ofUnknownWave = new Inverter(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(80),
                OptionalDouble.empty(),
                Optional.empty());
        assertThat(codes(roomOf(withInverter(backup, ofUnknownWave)))).contains(Code.INVERTER_UNSAID);
    }

    @Test
    void theTermsOfTheWhyAddUpToTheRuntime() {
        Backup backup = backup(battery("lead-sealed", 2, 12, 50, 283, 0.8), battery("lifepo4", 1, 12.8, 50, 283, 0.9));
        BackupAnswer answer = answer(aRoom().with(backup).build(), SIXTY_WATTS);
        assertThat(answer.why().orElseThrow().sumSi())
                .isCloseTo(answer.runtimeS().orElseThrow(), within(ROUNDING_S));
        assertThat(answer.why().orElseThrow().terms()).first().matches(term -> term.si() > 0);
        assertThat(answer.why().orElseThrow().terms().subList(1, 7)).allMatch(term -> term.si() <= 0);
    }

    @Test
    void theEssentialsAloneRunLonger() {
        BackupAnswer answer = answer(
                aRoom().with(backup(battery("lead-sealed", 1, 12, 50, 298, 1))).build(), SIXTY_WATTS);
        assertThat(answer.essentialRuntimeS().orElseThrow())
                .isGreaterThan(answer.runtimeS().orElseThrow());
    }

    @Test
    void theNeededBatteryLastsTheWishedTime() {
        Room room = aRoom().with(backup(battery("lead-sealed", 1, 12, 50, 298.15, 1)))
                .build();
        BackupAnswer answer = answer(room, SIXTY_WATTS);
        Needed needed = answer.needed();
        assertThat(needed.forS()).isEqualTo(8 * HOUR_S);
        Backup larger = backup(battery("lead-sealed", 1, 12, needed.chargeC() / HOUR_S, 298.15, 1));
        assertThat(runtimeS(larger, SIXTY_WATTS)).isCloseTo(8 * HOUR_S, within(0.01));
        assertThat(answer.findings())
                .filteredOn(each -> each.code() == Code.RUNTIME_SHORT)
                .singleElement()
                .satisfies(each ->
                        assertThat(each.amounts().get(2).si()).isCloseTo(needed.chargeC() - 50 * HOUR_S, within(1.0)));
    }

    @Test
    void withoutABatteryThereIsNoRuntimeButABatteryIsProposed() {
        BackupAnswer answer = answer(aRoom().build(), SIXTY_WATTS);
        assertThat(answer.runtimeS()).isEmpty();
        assertThat(answer.why()).isEmpty();
        assertThat(answer.findings()).extracting(Finding::code).containsExactly(Code.NO_BACKUP);
        Backup proposed = backup(battery(
                answer.needed().kind().id(),
                1,
                answer.needed().voltageV(),
                answer.needed().chargeC() / HOUR_S,
                293.15,
                0.8));
        Inverter assumed = new Inverter(
                OptionalDouble.of(0.88),
                OptionalDouble.of(10),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        assertThat(runtimeS(withInverter(proposed, assumed), SIXTY_WATTS)).isCloseTo(8 * HOUR_S, within(0.01));
    }

    @Test
    void aStandbyBlowerIsABackup() {
        Room room = aRoom().with(aBlower("spare").standby()).build();
        assertThat(answer(room, SIXTY_WATTS).findings()).isEmpty();
    }

    @Test
    void whatTheRoomDoesNotSayIsAssumedVisibly() {
        Battery battery = new Battery(
                new BatteryId("B"),
                "lifepo4",
                1,
                12.8,
                360_000,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        Backup backup =
                new Backup(List.of(battery), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertThat(answer(aRoom().with(backup).build(), SIXTY_WATTS).assumptions())
                .extracting(Assumption::what)
                .containsExactlyInAnyOrder(
                        "temperature of the battery",
                        "share of the rated capacity left in the battery",
                        "time that the battery should hold",
                        "efficiency of the inverter",
                        "idle draw of the inverter");
    }

    @Test
    void aWeakInverterIsFoundOut() {
        Inverter weak = new Inverter(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(50),
                OptionalDouble.of(70),
                Optional.of(Inverter.Wave.STEPPED));
        Backup backup = withInverter(backup(battery("lifepo4", 1, 12.8, 200, 298, 1)), weak);
        assertThat(codes(roomOf(backup)))
                .contains(Code.INVERTER_TOO_SMALL, Code.STARTING_SURGE, Code.WAVEFORM)
                .doesNotContain(Code.INVERTER_MISSING);
    }

    @Test
    void aBatteryWithoutAnInverterIsFoundOut() {
        Backup backup = new Backup(
                List.of(battery("lifepo4", 1, 12.8, 200, 298, 1)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(codes(roomOf(backup))).contains(Code.INVERTER_MISSING);
    }

    /** IEC 62485-2: 6 cells, 100 Ah, sealed, boost 8 mA/Ah: 0.24 m³ an hour. */
    @Test
    void chargingLeadAcidWantsFreshAirAndLithiumDoesNot() {
        Room lead = roomOf(backup(battery("lead-sealed", 1, 12, 100, 298, 1)));
        assertThat(answer(lead, SIXTY_WATTS).findings())
                .filteredOn(each -> each.code() == Code.BATTERY_VENTILATION)
                .singleElement()
                .satisfies(each -> assertThat(each.amounts().get(0).si()).isCloseTo(0.24 / 3600, within(1e-12)));
        assertThat(codes(roomOf(backup(battery("lifepo4", 1, 12.8, 100, 298, 1)))))
                .doesNotContain(Code.BATTERY_VENTILATION);
    }

    @Test
    void lithiumIsNotChargedInTheFrost() {
        assertThat(codes(roomOf(backup(battery("lifepo4", 1, 12.8, 100, 270, 1)))))
                .contains(Code.BATTERY_COLD_CHARGE);
        assertThat(codes(roomOf(backup(battery("lifepo4", 1, 12.8, 100, 280, 1)))))
                .doesNotContain(Code.BATTERY_COLD_CHARGE);
        assertThat(codes(roomOf(backup(battery("lead-sealed", 1, 12, 100, 270, 1)))))
                .doesNotContain(Code.BATTERY_COLD_CHARGE);
    }

    @Test
    void everyBatteryWantsItsFuse() {
        assertThat(codes(roomOf(backup(battery("lifepo4", 1, 12.8, 100, 298, 1)))))
                .contains(Code.BATTERY_FUSE);
    }

    @Test
    void sheddingNeedsOutletsThatAreMarked() {
        Backup backup = backup(battery("lifepo4", 1, 12.8, 100, 298, 1));
        assertThat(codes(roomOf(backup))).contains(Code.ESSENTIALS_NOT_MARKED);
        Room marked = aRoom().with(
                        aRack("A").shelf(0.5, aTank("T").with(anOutlet("o").essential())))
                .with(backup)
                .build();
        assertThat(codes(marked)).doesNotContain(Code.ESSENTIALS_NOT_MARKED);
    }

    @Test
    void theVesselThatIsTypedToFailFirstIsNamed() {
        Room room = aRoom().with(aRack("A")
                        .shelf(0.5, aTank("cone").survivalS(1200), aTank("slow").survivalS(7200), aTank("fish")))
                .build();
        assertThat(answer(room, SIXTY_WATTS).findings())
                .filteredOn(each -> each.code() == Code.FAILS_FIRST)
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.where().id()).isEqualTo("cone");
                    assertThat(each.amounts().get(0).si()).isEqualTo(1200);
                });
    }

    @Test
    void heatersAndBlowerOnOneCircuitFailTogether() {
        Circuit heaters = new Circuit(new CircuitId("c1"), "Heaters", Optional.of(true), Optional.of(true));
        Room room = aRoom().with(heaters).with(aBlower("b").circuit("c1")).build();
        assertThat(codes(room)).contains(Code.SHARED_CIRCUIT);
        Circuit lamps = new Circuit(new CircuitId("c1"), "Lamps", Optional.of(true), Optional.of(false));
        assertThat(codes(aRoom().with(lamps).with(aBlower("b").circuit("c1")).build()))
                .doesNotContain(Code.SHARED_CIRCUIT);
    }

    @Test
    void aCircuitWithoutTheBlowerIsNoShared() {
        Circuit heaters = new Circuit(new CircuitId("c1"), "Heaters", Optional.of(true), Optional.of(true));
        Room room = aRoom().with(heaters).with(aBlower("b")).build();
        assertThat(codes(room)).doesNotContain(Code.SHARED_CIRCUIT);
    }

    @Test
    void aPumpThatGoesWhenTheBlowerComesMayShareWithTheHeaters() {
        Circuit heaters = new Circuit(new CircuitId("c1"), "Heaters", Optional.of(true), Optional.of(true));
        RoomBuilder room = aRoom().with(heaters).with(aBlower("pump").today().circuit("c1"));
        assertThat(codes(room.build())).contains(Code.SHARED_CIRCUIT);
        assertThat(codes(room.with(aBlower("b")).build())).doesNotContain(Code.SHARED_CIRCUIT);
    }

    @Test
    void racksThatAreOnlyPlannedDoNotFailFirst() {
        Room room = aRoom().with(aRack("A").planned().shelf(0.5, aTank("cone").survivalS(1200)))
                .build();
        assertThat(codes(room)).doesNotContain(Code.FAILS_FIRST);
    }

    @Test
    void aPlannedBlowerAloneIsNoBackup() {
        assertThat(codes(aRoom().with(aBlower("b")).build())).contains(Code.NO_BACKUP);
    }

    @Test
    void anOutletThatIsNotEssentialDoesNotCountAsMarked() {
        Room room = aRoom().with(aRack("A").shelf(0.5, aTank("T").with(anOutlet("o"))))
                .with(backup(battery("lifepo4", 1, 12.8, 100, 298, 1)))
                .build();
        assertThat(codes(room)).contains(Code.ESSENTIALS_NOT_MARKED);
    }

    @Test
    void aGeneratorIsABackupWithACaution() {
        Backup backup = new Backup(
                List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(Backup.Generator.UNKNOWN));
        assertThat(codes(roomOf(backup))).containsExactly(Code.GENERATOR);
    }

    @Test
    void pumpsWithBatteriesOfTheirOwnAreABackup() {
        Backup pumps = Backup.NONE.withBatteryPumps(Optional.of(new Backup.BatteryPumps("battery-pump-small", 3)));
        assertThat(codes(roomOf(Backup.NONE))).containsExactly(Code.NO_BACKUP);
        assertThat(codes(roomOf(pumps))).doesNotContain(Code.NO_BACKUP);
    }

    @Test
    void theWhyNamesWhatWentIn() {
        BackupAnswer answer = answer(roomOf(backup(battery("lead-sealed", 1, 12, 50, 283, 0.8))), SIXTY_WATTS);
        assertThat(answer.why().orElseThrow().inputs())
                .extracting(Why.Input::si)
                .containsExactly(60.0, 0.9, 5.0, 12 * 50 * HOUR_S, 0.5, 283.0, 0.8, 1.15, 20 * HOUR_S);
    }

    @Property
    void aBiggerBatteryNeverRunsShorter(
            @ForAll @DoubleRange(min = 1, max = 400) double ah,
            @ForAll @DoubleRange(min = 0, max = 400) double more,
            @ForAll @DoubleRange(min = 1, max = 800) double watts) {
        for (String kind : List.of("lead-flooded", "lead-sealed", "lifepo4")) {
            double small = runtimeS(backup(battery(kind, 1, 12, ah, 290, 0.9)), load(watts));
            double large = runtimeS(backup(battery(kind, 1, 12, ah + more, 290, 0.9)), load(watts));
            assertThat(large).isGreaterThanOrEqualTo(small - ROUNDING_S);
        }
    }

    @Property
    void morePowerNeverRunsLonger(
            @ForAll @DoubleRange(min = 1, max = 400) double ah,
            @ForAll @DoubleRange(min = 1, max = 800) double watts,
            @ForAll @DoubleRange(min = 0, max = 800) double more) {
        for (String kind : List.of("lead-flooded", "lead-sealed", "lifepo4")) {
            Backup backup = backup(battery(kind, 1, 12, ah, 290, 0.9));
            assertThat(runtimeS(backup, load(watts + more)))
                    .isLessThanOrEqualTo(runtimeS(backup, load(watts)) + ROUNDING_S);
        }
    }

    @Property
    void addingABatteryOfAnyKindNeverRunsShorter(
            @ForAll @DoubleRange(min = 1, max = 400) double ah, @ForAll @DoubleRange(min = 1, max = 400) double other) {
        Battery lead = battery("lead-sealed", 1, 12, ah, 290, 0.9);
        double alone = runtimeS(backup(lead), SIXTY_WATTS);
        double both = runtimeS(backup(lead, battery("lifepo4", 1, 12.8, other, 290, 0.9)), SIXTY_WATTS);
        assertThat(both).isGreaterThanOrEqualTo(alone - ROUNDING_S);
    }

    @Test
    void colderNeverGivesMore() {
        List<Double> runtimes = IntStream.rangeClosed(240, 320)
                .mapToObj(kelvin -> runtimeS(backup(battery("lead-sealed", 1, 12, 100, kelvin, 1)), SIXTY_WATTS))
                .toList();
        assertThat(runtimes).isSorted();
    }

    private static Load load(double watts) {
        return new Load(watts, watts, OptionalDouble.empty());
    }

    private List<Code> codes(Room room) {
        return answer(room, SIXTY_WATTS).findings().stream().map(Finding::code).toList();
    }

    private double runtimeS(Backup backup, Load load) {
        return answer(roomOf(backup), load).runtimeS().orElseThrow();
    }

    private BackupAnswer answer(Room room, Load load) {
        return BatteryRuntime.of(room, catalogue, load);
    }

    private static Room roomOf(Backup backup) {
        RoomBuilder room = aRoom();
        return room.with(backup).build();
    }

    private static Backup backup(Battery... batteries) {
        Inverter inverter = new Inverter(
                OptionalDouble.of(0.9),
                OptionalDouble.of(5),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
        return new Backup(
                List.of(batteries), Optional.of(inverter), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Backup withInverter(Backup backup, Inverter inverter) {
        return new Backup(
                backup.batteries(), Optional.of(inverter), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Battery battery(
            String kind, int count, double voltageV, double ah, double temperatureK, double wear) {
        return new Battery(
                new BatteryId(kind),
                kind,
                count,
                voltageV,
                ah * HOUR_S,
                OptionalDouble.of(temperatureK),
                OptionalDouble.of(wear),
                Optional.empty());
    }
}
