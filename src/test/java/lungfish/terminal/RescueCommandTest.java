package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What helps in an outage, as the terminal tells it. */
final class RescueCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    static List<String> demoRooms() {
        return DemoRooms.NAMES;
    }

    private static Said means(String... further) {
        return Said.by(Stream.concat(Stream.of("outage", "--means"), Stream.of(further))
                .toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theJsonFitsItsSchemaAndItsSetsKeepWhatTheySay(String room) throws IOException {
        JsonNode tree = JSON.readTree(means(room, "--json").out());

        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(Path.of("docs/schemas/rescue.schema.json").toUri())
                        .validate(tree))
                .isEmpty();
        JsonNode all = tree.path("means").path("cheapest").get(0);
        assertThat(all.path("goal").asText()).isEqualTo("all");
        assertThat(all.path("asked").asInt())
                .isEqualTo(tree.path("means").path("judged").asInt());
        for (String hazard : List.of("mains", "blower")) {
            assertThat(all.path(hazard).path("safe").asInt())
                    .isGreaterThanOrEqualTo(
                            all.path("asked").asInt() - all.path("lost").size());
        }
    }

    @Test
    void theTextSaysTheCheapestSetsEachMeansAndWhatToTakeCareOf() {
        assertThat(means("garage-killifish").out())
                .contains("Cheapest for all 29 tanks", "Cheapest for the 5 essential tanks", "Second line", "Take care")
                .contains("Generator 900 W, portable", "transfer switch", "fuse each");
    }

    @Test
    void theWaysToGiveAirStandBelow() throws IOException {
        JsonNode ways = JSON.readTree(means("garage-killifish", "--json").out())
                .path("redundancy")
                .path("ways");

        assertThat(ways).hasSize(5);
        assertThat(means("garage-killifish").out()).contains("Redundancy", "One blower", "What takes several at once");
    }
}
