package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the terminal says of the pipe of every demo room. */
final class PipesOfDemoRoomsTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int SCREEN_LINES = 40;

    static List<String> demoRooms() {
        return DemoRooms.NAMES;
    }

    private static JsonNode fitting(String json) throws IOException {
        JsonNode tree = JSON.readTree(json);
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(Path.of("docs/schemas/pipes.schema.json").toUri())
                        .validate(tree))
                .isEmpty();
        return tree;
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void thePipesFitTheirSchema(String room) throws IOException {
        JsonNode pipes = fitting(Said.by("pipes", room, "--json").out());

        assertThat(pipes.path("variants").get(0).path("as_drawn").asBoolean()).isTrue();
        assertThat(pipes.path("cheapest").path("best").path("breaks")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void thePageIsAScreenAtMost(String room) {
        assertThat(Said.by("pipes", room).out().lines().count()).isLessThanOrEqualTo(SCREEN_LINES);
    }

    @Test
    void theGarageIsToldThatItsPipeDoesNotMatter() {
        assertThat(Said.by("pipes", "garage-killifish").out())
                .startsWith("The pipe does not matter: ")
                .contains("even in 16 mm.")
                .contains("a reserve of 30 %: costs 25");
    }

    @Test
    void figuresAreInTheUnitsThatAreAskedFor() {
        assertThat(Said.by("pipes", "garage-killifish", "--units", "us").out())
                .contains(" psi")
                .doesNotContain(" kPa ");
    }

    @Test
    void aRoomWithoutAMainSaysWhereToLook(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("bare.room.json");
        ObjectMapper json = new ObjectMapper();
        var room = (com.fasterxml.jackson.databind.node.ObjectNode)
                json.readTree(Files.readString(Path.of("demo-rooms/starting-out.room.json")));
        room.putArray("runs");
        room.putArray("blowers");
        Files.writeString(file, json.writeValueAsString(room));

        assertThat(Said.by("pipes", file.toString()).out()).contains("'check' says what is missing");
        JsonNode pipes = fitting(Said.by("pipes", file.toString(), "--json").out());
        assertThat(pipes.path("cheapest").isNull()).isTrue();
        assertThat(pipes.path("problems")).isNotEmpty();
    }
}
