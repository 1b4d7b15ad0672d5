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
        "INVERTER_IDLE, 0, 8, 1e6"
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
}
