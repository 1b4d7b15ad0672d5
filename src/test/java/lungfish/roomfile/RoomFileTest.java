package lungfish.roomfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.json.Reading;
import lungfish.room.RandomRooms;
import lungfish.room.Room;
import lungfish.room.Rooms;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

final class RoomFileTest {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    @Provide
    Arbitrary<Room> rooms() {
        return RandomRooms.any(CATALOGUE);
    }

    private static Reading<Room> read(String text) {
        return new RoomReader(CATALOGUE).read(text);
    }

    @Property(tries = 200)
    void whatWasWrittenReadsBackEqual(@ForAll("rooms") Room room) {
        assertThat(new RoomReader(CATALOGUE).read(RoomWriter.bytes(room)).orThrow())
                .isEqualTo(room);
    }

    @Property(tries = 50)
    void whatWasReadIsWrittenAsTheSameBytes(@ForAll("rooms") Room room) {
        byte[] first = RoomWriter.bytes(room);
        assertThat(RoomWriter.bytes(new RoomReader(CATALOGUE).read(first).orThrow()))
                .isEqualTo(first);
    }

    @Test
    void anEmptyRoomIsAShortFile() {
        assertThat(RoomWriter.text(Rooms.empty()))
                .isEqualTo(
                        """
                {
                  "format": "lungfish-room",
                  "version": 1,
                  "name": "Test room",
                  "display_units": "metric",
                  "shell": {
                    "length_m": 6,
                    "width_m": 4,
                    "height_m": 2.4
                  }
                }
                """);
    }

    @Test
    void aNewerVersionIsRefusedWithoutLookingFurther() {
        String text = RoomWriter.text(Rooms.small())
                .replace("\"version\": 1", "\"version\": 2")
                .replace("\"display_units\": \"metric\"", "\"display_units\": \"cubits\", \"new\": 3");
        assertThat(read(text).problems())
                .containsExactly(new Problem(
                        "/version",
                        "this file has version 2, made by a newer program; it was left as it is",
                        "version 1 or older, or a newer program to open it with"));
    }

    @Test
    void aFileOfAnotherKindIsRefusedWithoutLookingFurther() {
        assertThat(read("{\"format\": \"air-network-1\", \"nodes\": [\"n0\"]}").problems())
                .extracting(Problem::path)
                .containsExactly("/format");
    }

    @Test
    void whatIsNoObjectIsOneProblem() {
        assertThat(read("[1, 2]").problems()).containsExactly(new Problem("", "found a list of 2", "an object"));
    }

    @Test
    void anEmptyObjectMissesWhatARoomMustHave() {
        assertThat(read("{}").problems())
                .extracting(Problem::path)
                .containsExactly("/format", "/version", "/name", "/display_units", "/shell");
    }

    @Test
    void aFileCutAnywhereIsRefused() {
        byte[] whole = RoomWriter.bytes(Rooms.small());
        for (int length = 0; length < whole.length - 2; length++) {
            byte[] cut = Arrays.copyOf(whole, length);
            assertThat(new RoomReader(CATALOGUE).read(cut).problems()).hasSize(1);
        }
    }

    @Property(tries = 1000)
    void noDamageMakesTheReaderFail(@ForAll Random random) {
        byte[] bytes = RoomWriter.bytes(Rooms.small());
        for (int i = random.nextInt(6); i >= 0; i--) {
            bytes[random.nextInt(bytes.length)] =
                    "{}[]\",:0-e\\u \n".getBytes(StandardCharsets.UTF_8)[random.nextInt(14)];
        }
        Reading<Room> reading = new RoomReader(CATALOGUE).read(bytes);
        assertThat(reading.value().isPresent()).isEqualTo(reading.problems().isEmpty());
    }

    @Test
    void aMarkOfByteOrderIsToldBesideEverythingElse() {
        String text = '\uFEFF' + RoomWriter.text(Rooms.small()).replace("\"use\": \"always\"", "\"use\": \"never\"");
        List<Problem> problems = new RoomReader(CATALOGUE)
                .read(text.getBytes(StandardCharsets.UTF_8))
                .problems();
        assertThat(problems).extracting(Problem::path).containsExactly("", "/racks/0/shelves/0/tanks/0/outlets/0/use");
    }

    @Test
    void aRoomInUtf16IsToldToBe() {
        byte[] bytes = RoomWriter.text(Rooms.small()).getBytes(StandardCharsets.UTF_16LE);
        assertThat(new RoomReader(CATALOGUE).read(bytes).problems())
                .extracting(Problem::found)
                .containsExactly("the bytes look like UTF-16 or UTF-32");
    }
}
