package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lungfish.room.Rooms;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SureCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LINES_OF_A_SCREEN = 48;

    static List<String> demoRooms() {
        return DemoRooms.NAMES;
    }

    private static Said sure(String... further) {
        String[] args = new String[further.length + 3];
        args[0] = "sure";
        System.arraycopy(further, 0, args, 1, further.length);
        args[further.length + 1] = "--samples";
        args[further.length + 2] = "60";
        return Said.by(args);
    }

    private static JsonSchema schema() {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Path.of("docs/schemas/sure.schema.json").toUri());
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theJsonFitsItsSchema(String room) throws IOException {
        assertThat(schema().validate(JSON.readTree(sure(room, "--json").out()))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theTextFitsOnAScreen(String room) {
        Said said = sure(room);

        assertThat(said.out()).doesNotContain("NaN", "{", "null");
        assertThat(said.out().lines())
                .hasSizeLessThanOrEqualTo(LINES_OF_A_SCREEN)
                .allMatch(line -> line.length() <= 120);
    }

    /** With nothing off it needs 8.75 kPa; but one of its 320 outlets is nearly always worse than its class. */
    @Test
    void aPlanBelowItsBandSaysWhatToExpectInstead() {
        assertThat(sure("club-hall").out().replaceAll("\\s+", " "))
                .contains("Of 320 outlets one is nearly always worse, and that one sets the pressure: expect about 11")
                .contains("rather than 8.75 kPa.");
    }

    @Test
    void severalMachinesAreSaidToBeOffAlike() {
        assertThat(sure("club-hall").out()).contains("All 4 machines are off alike");
        assertThat(sure("starting-out").out()).doesNotContain("off alike");
    }

    @Test
    void aRoomThatCannotBeSolvedIsToldSoInBothShapes(@TempDir Path folder) throws IOException {
        Path room = Files.write(folder.resolve("empty.room.json"), RoomWriter.bytes(Rooms.empty()));

        JsonNode json = JSON.readTree(sure(room.toString(), "--json").out());

        assertThat(schema().validate(json)).isEmpty();
        assertThat(json.get("bands").isNull()).isTrue();
        assertThat(json.get("problems")).isNotEmpty();
        assertThat(sure(room.toString()).out()).contains("cannot be solved");
    }

    @Test
    void theSeedSaysWhichRoomsAreDrawn() {
        String first = sure("starting-out", "--json").out();

        assertThat(sure("starting-out", "--json", "--seed", "1").out()).isEqualTo(first);
        assertThat(sure("starting-out", "--json", "--seed", "2").out()).isNotEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"9", "100001", "-5", "many"})
    void aNumberOfSamplesThatTellsNothingIsRefused(String samples) {
        Said said = Said.by("sure", "starting-out", "--samples", samples);

        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err()).contains(samples).contains("Expected");
    }
}
