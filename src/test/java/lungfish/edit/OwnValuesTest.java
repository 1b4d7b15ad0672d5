package lungfish.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lungfish.catalogue.CatalogueFiles;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.reason.Assumable;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Room;
import lungfish.room.Rooms;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomChange;
import lungfish.roomfile.RoomReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A keeper's own number instead of an assumed one. */
final class OwnValuesTest {
    private static final Room ROOM = Rooms.small();

    private static OwnValue ofRoom(Assumable key) {
        return OwnValues.of(key, List.of(PartId.ROOM)).orElseThrow();
    }

    private static Room said(Room room, OwnValue value, OptionalDouble si) {
        return value.say(room, si).edit().orElseThrow().of(room);
    }

    /** The limits are those of docs/schemas/room.schema.json; the number in the middle is a plain one. */
    @ParameterizedTest
    @CsvSource({
        "ROOM_TEMPERATURE, 200, 298, 400",
        "HUMIDITY, 0, 0.5, 1",
        "ALTITUDE, -500, 340, 9000",
        "ABSORPTION, 0, 0.2, 1",
        "GROWTH_RESERVE, 0, 0.3, 10",
        "INDEX_SPARE, 0, 700, 100000",
        "LOUDEST, 0, 40, 200",
        "RUNTIME, 1e-9, 7200, 1e10",
        "JAR, 1e-9, 0.002, 1",
        "VOLTAGE, 1e-9, 120, 1000",
        "FREQUENCY, 1e-9, 60, 400",
        "ENERGY_PRICE, 0, 1e-7, 1",
        "INVERTER_EFFICIENCY, 1e-9, 0.9, 1",
        "INVERTER_IDLE, 0, 8, 1e6",
        "NOTICE, 0, 1800, 1e10",
        "MEND, 1e-9, 86400, 1e10",
        "CHARGE_RATE, 1e-9, 240, 1e6"
    })
    void whatIsSaidIsKeptAndCanBeFiledAndCanBecomeUnknownAgain(Assumable key, double least, double plain, double most) {
        OwnValue value = ofRoom(key);
        for (double si : new double[] {least, plain, most}) {
            Room after = said(ROOM, value, OptionalDouble.of(si));
            assertThat(value.now().apply(after)).hasValue(si);
            assertThat(RoomChange.problems(ROOM, after, CatalogueFiles.load())).isEmpty();
            assertThat(said(after, value, value.now().apply(ROOM))).isEqualTo(ROOM);
        }
        Stream.of(least - 1, most * 1.01, Double.NaN)
                .forEach(si -> assertThat(value.say(ROOM, OptionalDouble.of(si)).refused())
                        .as("%s", si)
                        .isPresent());
    }

    @Test
    void whatCannotBeIsToldInTheReadersUnitsWithTheLimits() {
        Refused refused = ofRoom(Assumable.ROOM_TEMPERATURE)
                .say(ROOM, OptionalDouble.of(500))
                .refused()
                .orElseThrow();
        assertThat(refused.sentence(Quantities.in(DisplayUnits.METRIC)))
                .contains("Room temperature", "227 °C", "-73.1 °C to 127 °C"); // less 273.15 K: -73.15 and 126.85
    }

    @Test
    void anEditIsCalledByWhatItSays() {
        OwnValue value = ofRoom(Assumable.LOUDEST);
        assertThat(value.say(ROOM, OptionalDouble.of(40)).edit().orElseThrow().done())
                .isEqualTo("Set: loudest that you will bear");
    }

    /** Four outlets of the garage have no depth of their own (garage-killifish.room.json). */
    @Test
    void oneNumberIsSaidOfAllOutletsThatAreMeant() {
        Room garage = new RoomReader(CatalogueFiles.load())
                .read(DemoRooms.bytes("garage-killifish"))
                .match(room -> room, problems -> {
                    throw new AssertionError(problems);
                });
        List<PartId> silent = garage.seats().stream()
                .filter(seat -> seat.outlet().depthM().isEmpty())
                .map(seat -> seat.outlet().id().part())
                .toList();
        assertThat(silent).hasSize(4);
        OwnValue depth = OwnValues.of(Assumable.WATER_ABOVE_BOTTOM, silent).orElseThrow();
        Room after = said(garage, depth, OptionalDouble.of(0.12));
        assertThat(depth.now().apply(after)).hasValue(0.12);
        assertThat(after.seats()).noneMatch(seat -> seat.outlet().depthM().isEmpty());
    }

    @Test
    void anInverterOfWhichNothingIsSaidAnyMoreIsNone() {
        OwnValue idle = ofRoom(Assumable.INVERTER_IDLE);
        Room after = said(ROOM, idle, OptionalDouble.of(8));
        assertThat(after.backup().inverter().map(Backup.Inverter::idleW)).hasValue(OptionalDouble.of(8));
        assertThat(said(after, idle, OptionalDouble.empty()).backup().inverter())
                .isEmpty();
    }

    @Test
    void whatNoOneNumberSaysTellsHowElseItCanBeSaid() {
        for (Assumable key : Assumable.values()) {
            Optional<OwnValue> own = OwnValues.of(key, List.of(PartId.ROOM));
            boolean isOfParts = Stream.of("PUMP", "HOSE", "WALL", "DOOR").anyMatch(key.name()::startsWith);
            assertThat(own.isPresent() || isOfParts || !OwnValues.otherwise(key).isEmpty())
                    .as("%s", key)
                    .isTrue();
        }
    }

    /** 3 mg/L and 2 mg/L are assumed. */
    @Test
    void theAlarmGoesBeforeThereIsDanger() {
        OwnValue alarm = ofRoom(Assumable.ALARM_OXYGEN);
        OwnValue danger = ofRoom(Assumable.DANGER_OXYGEN);
        Room at4 = said(ROOM, alarm, OptionalDouble.of(0.004));
        assertThat(said(at4, danger, OptionalDouble.of(0.003)).wishes().dangerKgPerM3())
                .hasValue(0.003);
        assertThat(danger.say(at4, OptionalDouble.of(0.004))
                        .refused()
                        .orElseThrow()
                        .what())
                .doesNotContain("assumed");
        assertThat(alarm.say(ROOM, OptionalDouble.of(0.0015))
                        .refused()
                        .orElseThrow()
                        .sentence(Quantities.in(DisplayUnits.METRIC)))
                .startsWith("The alarm at 1.5 mg/L would not go before the danger at 2.0 mg/L (assumed).");
        assertThat(danger.say(ROOM, OptionalDouble.of(0.003)).refused()).isPresent();
    }

    @Test
    void nothingIsSaidOfAGeneratorThatIsNotThere() {
        OwnValue fuel = ofRoom(Assumable.GENERATOR_FUEL);
        assertThat(fuel.say(ROOM, OptionalDouble.of(3600)).refused()).isPresent();
        Room with = ROOM.withBackup(ROOM.backup().withGenerator(Optional.of(Backup.Generator.UNKNOWN)));
        Room after = said(with, fuel, OptionalDouble.of(3600));
        assertThat(after.backup().generator().orElseThrow().fuelS()).hasValue(3600);
        assertThat(said(after, fuel, OptionalDouble.empty())).isEqualTo(with);
    }

    @Test
    void readyIsSaidOfTheGeneratorOrOfTheStandbyThatIsMeant() {
        OwnValue standby = OwnValues.of(Assumable.READY, List.of(new PartId(PartId.Kind.BLOWER, "spare")))
                .orElseThrow();
        assertThat(said(ROOM, standby, OptionalDouble.of(300)).backup().standby())
                .hasValue(new Backup.Standby(Backup.Standby.Start.MANUAL, OptionalDouble.of(300)));
    }
}
