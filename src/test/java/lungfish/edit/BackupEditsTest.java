package lungfish.edit;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRack;
import static lungfish.room.Rooms.aRoom;
import static lungfish.room.Rooms.aTank;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.reason.Assumable;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.Tank;
import lungfish.room.TankId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Edits of what keeps the air on when something fails. */
final class BackupEditsTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final TankId ONE = new TankId("one");
    private static final TankId TWO = new TankId("two");
    private static final BatteryId BATTERY = new BatteryId("battery");
    private static final CircuitId CIRCUIT = new CircuitId("circuit");
    private static final Room ROOM = aRoom().with(aBlower("b"))
            .with(aRack("A").shelf(0.5, aTank("one"), aTank("two").at(0.7)))
            .build();

    private static Room after(Room room, Attempt attempt) {
        return attempt.match(edit -> edit.of(room), refused -> {
            throw new AssertionError(refused);
        });
    }

    private static String refused(Attempt attempt) {
        return attempt.refused().orElseThrow().sentence(Quantities.in(DisplayUnits.METRIC));
    }

    private static BatteryClass lead() {
        return CATALOGUE.battery("lead-sealed").orElseThrow();
    }

    private static Backup.Battery battery(Room room) {
        return room.backup().batteries().get(0);
    }

    static Stream<Function<Room, List<Attempt>>> thereAndBack() {
        return Stream.of(
                room -> List.of(BatteryEdits.add(room, lead()), BatteryEdits.remove(withBattery(), BATTERY)),
                room -> List.of(
                        BackupEdits.addInverter(room, CATALOGUE.backupGear("inverter-600")),
                        BackupEdits.removeInverter(room)),
                room -> List.of(BackupEdits.addGenerator(room, Optional.empty()), BackupEdits.removeGenerator(room)),
                room -> List.of(BackupEdits.pumps(room, pump()), BackupEdits.removePumps(room)),
                room -> List.of(BackupEdits.addAlarm(room), BackupEdits.removeAlarm(room)),
                room -> List.of(BackupEdits.addShedding(room), BackupEdits.removeShedding(room)),
                room -> List.of(
                        BackupEdits.start(room, Optional.of(Backup.Standby.Start.AUTOMATIC)),
                        BackupEdits.start(room, Optional.empty())),
                room -> List.of(CircuitEdits.add(room), CircuitEdits.remove(withCircuit(), CIRCUIT)));
    }

    private static BackupClass pump() {
        return CATALOGUE.backupGear("battery-pump-small").orElseThrow();
    }

    private static Room withBattery() {
        return after(ROOM, BatteryEdits.add(ROOM, lead()));
    }

    private static Room withCircuit() {
        return after(ROOM, CircuitEdits.add(ROOM));
    }

    @ParameterizedTest
    @MethodSource("thereAndBack")
    void whatIsAddedCanBeTakenAwayAgain(Function<Room, List<Attempt>> both) {
        List<Attempt> attempts = both.apply(ROOM);
        Room with = after(ROOM, attempts.get(0));
        assertThat(with).isNotEqualTo(ROOM);
        assertThat(after(with, attempts.get(1))).isEqualTo(ROOM);
    }

    /** 12 V is the block of sealed lead (batteries.csv); 100 Ah are 360 000 C. */
    @Test
    void aNewBatteryIsOneBlockThatIsSaidOtherwiseAtOnce() {
        Room room = withBattery();
        assertThat(battery(room).voltageV()).isEqualTo(12);
        assertThat(battery(room).capacityC()).isEqualTo(360_000);
        Room larger = after(room, BatteryEdits.capacity(BATTERY).say(room, OptionalDouble.of(720_000)));
        assertThat(battery(larger).capacityC()).isEqualTo(720_000);
        assertThat(battery(after(larger, BatteryEdits.count(larger, BATTERY, 4)))
                        .count())
                .isEqualTo(4);
    }

    @Test
    void whatStandsOnABatteryCannotBeLeftOut() {
        Room room = withBattery();
        assertThat(refused(BatteryEdits.voltage(BATTERY).say(room, OptionalDouble.empty())))
                .startsWith("Voltage of one battery cannot be left out.");
        assertThat(refused(BatteryEdits.capacity(BATTERY).say(room, OptionalDouble.of(0))))
                .isEqualTo("Capacity of one battery cannot be 0 Ah. It must be above 0 Ah, and at most 278000 Ah.");
        assertThat(refused(BatteryEdits.count(room, BATTERY, 0))).contains("from 1 to 1000");
    }

    @Test
    void anInverterLikeOneOfTheCatalogueHasItsRatingAndNothingElse() {
        Room room = after(ROOM, BackupEdits.addInverter(ROOM, CATALOGUE.backupGear("inverter-600")));
        Backup.Inverter inverter = room.backup().inverter().orElseThrow();
        assertThat(inverter.ratedW()).hasValue(600);
        assertThat(inverter.surgeW()).hasValue(1200);
        assertThat(inverter.efficiency()).isEmpty();
    }

    @Test
    void anotherKindOfPumpLeavesTheirNumber() {
        Room three = after(ROOM, BackupEdits.pumps(ROOM, pump()));
        three = after(three, BackupEdits.pumps(three, 3));
        Room large = after(
                three,
                BackupEdits.pumps(
                        three, CATALOGUE.backupGear("battery-pump-large").orElseThrow()));
        assertThat(large.backup().batteryPumps()).hasValue(new Backup.BatteryPumps("battery-pump-large", 3));
    }

    @Test
    void nothingIsSaidOfWhatIsNotThere() {
        assertThat(refused(BackupEdits.pumps(ROOM, 2))).contains("no battery pumps");
        assertThat(refused(BackupEdits.wave(ROOM, Optional.empty()))).contains("no inverter");
        assertThat(refused(BackupValues.GENERATOR_RATED.say(ROOM, OptionalDouble.of(900))))
                .contains("no generator");
        assertThat(BatteryEdits.remove(ROOM, BATTERY).refused()).isPresent();
        assertThat(refused(StirrerEdits.powerW(ROOM, List.of(ONE), OptionalDouble.of(5))))
                .contains("plug of its own");
    }

    /** Where it rings is one thing, what it hangs on another. */
    @Test
    void anAlarmThatIsSetStaysOnItsCircuit() {
        Room room = after(withCircuit(), BackupEdits.addAlarm(withCircuit()));
        room = after(room, BackupEdits.alarmCircuit(room, Optional.of(CIRCUIT)));
        room = after(room, BackupValues.ALARM_SET.say(room, OptionalDouble.of(5000)));
        assertThat(room.backup().alarm()).hasValue(new Backup.Alarm(OptionalDouble.of(5000), Optional.of(CIRCUIT)));
    }

    /** How long it takes stays when only what starts it changes. */
    @Test
    void whatStartsTheStandbyAndHowLongThatTakesAreSaidApart() {
        Room room = after(ROOM, BackupValues.STANDBY_READY.say(ROOM, OptionalDouble.of(600)));
        room = after(room, BackupEdits.start(room, Optional.of(Backup.Standby.Start.AUTOMATIC)));
        assertThat(room.backup().standby())
                .hasValue(new Backup.Standby(Backup.Standby.Start.AUTOMATIC, OptionalDouble.of(600)));
    }

    @Test
    void sheddingIsSaidInWordsThatAreThere() {
        Room room = after(ROOM, BackupEdits.sheddingValve(ROOM, "The ball valve"));
        assertThat(room.backup().shedding().orElseThrow().valve()).isEqualTo("The ball valve");
        assertThat(BackupEdits.sheddingWho(room, " ").refused()).isPresent();
    }

    /** The circuit is gone: a blower, a battery and a stirrer that hung on it hang on an unknown one. */
    @Test
    void whatHungOnACircuitThatIsGoneHangsOnAnUnknownOne() {
        Room room = after(withCircuit(), BatteryEdits.add(withCircuit(), lead()));
        Optional<CircuitId> on = Optional.of(CIRCUIT);
        room = after(room, BatteryEdits.chargedFrom(room, BATTERY, on));
        room = after(room, MachineEdits.circuit(room, new BlowerId("b"), on));
        room = after(room, StirrerEdits.stir(room, List.of(ONE), Optional.of(Stirrer.Kind.POWERHEAD)));
        room = after(room, StirrerEdits.circuit(room, List.of(ONE), on));
        room = after(room, BackupEdits.addAlarm(room));
        room = after(room, BackupEdits.alarmCircuit(room, on));
        assertThat(wired(room)).containsOnly(on).hasSize(4);
        assertThat(wired(after(room, CircuitEdits.remove(room, CIRCUIT))))
                .containsOnly(Optional.empty())
                .hasSize(4);
    }

    private static List<Optional<CircuitId>> wired(Room room) {
        return List.of(
                battery(room).chargedFrom(),
                room.backup().alarm().flatMap(Backup.Alarm::circuit),
                room.blowers().get(0).circuit(),
                room.stirrers().get(0).circuit());
    }

    @Test
    void nothingHangsOnACircuitThatIsNotThere() {
        BiFunction<Room, Optional<CircuitId>, Attempt> hang =
                (room, circuit) -> MachineEdits.circuit(room, new BlowerId("b"), circuit);
        assertThat(hang.apply(ROOM, Optional.of(CIRCUIT)).refused()).isPresent();
        assertThat(hang.apply(ROOM, Optional.empty()).edit()).isPresent();
    }

    @Test
    void severalTanksAreStirredAtOnceAndEachHasItsOwn() {
        Room room = after(ROOM, StirrerEdits.stir(ROOM, List.of(ONE), Optional.of(Stirrer.Kind.POWERHEAD)));
        Room both = after(room, StirrerEdits.stir(room, List.of(ONE, TWO), Optional.of(Stirrer.Kind.HANG_ON_FILTER)));
        assertThat(both.stirrers()).hasSize(2).allMatch(each -> each.kind() == Stirrer.Kind.HANG_ON_FILTER);
        assertThat(both.stirrers().get(0).id()).isEqualTo(room.stirrers().get(0).id());
        assertThat(after(both, StirrerEdits.stir(both, List.of(ONE), Optional.empty()))
                        .stirrers())
                .extracting(Stirrer::tank)
                .containsExactly(TWO);
    }

    @Test
    void proteinIsSaidOfFoodThatIsSaid() {
        assertThat(refused(ContentEdits.protein(ROOM, List.of(ONE), OptionalDouble.of(0.4))))
                .contains("No food");
        Room fed = after(ROOM, ContentEdits.foodKg(ROOM, List.of(ONE), OptionalDouble.of(0.002)));
        OwnValue protein = OwnValues.of(Assumable.PROTEIN, List.of(ONE.part())).orElseThrow();
        Room rich = after(fed, protein.say(fed, OptionalDouble.of(0.5)));
        assertThat(first(rich).feeding()).hasValue(new Tank.Feeding(0.002, OptionalDouble.of(0.5)));
        Room more = after(rich, ContentEdits.foodKg(rich, List.of(ONE), OptionalDouble.of(0.003)));
        assertThat(first(more).feeding()).hasValue(new Tank.Feeding(0.003, OptionalDouble.of(0.5)));
        assertThat(first(after(more, ContentEdits.foodKg(more, List.of(ONE), OptionalDouble.empty())))
                        .feeding())
                .isEmpty();
    }

    /** Two tanks do not eat the same. */
    @Test
    void foodIsSaidOfOneTankAtATime() {
        assertThat(OwnValues.of(Assumable.FOOD_SHARE, List.of(ONE.part()))).isPresent();
        assertThat(OwnValues.of(Assumable.FOOD_SHARE, List.of(ONE.part(), TWO.part())))
                .isEmpty();
    }

    @Test
    void aCopyOfATankThatWasJustFedWasJustFedToo() {
        Room fed = after(ROOM, ContentEdits.justFed(ROOM, List.of(TWO), Optional.of(true)));
        Room copied = after(fed, Copies.duplicate(fed, Selection.of(Part.tank(TWO))));
        assertThat(copied.racks().get(0).tanks().filter(tank -> tank.justFed().isPresent()))
                .hasSize(2);
    }

    private static Tank first(Room room) {
        return room.racks().get(0).tanks().findFirst().orElseThrow();
    }
}
