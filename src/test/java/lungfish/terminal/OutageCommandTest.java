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
import java.util.stream.Stream;
import lungfish.room.Rooms;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class OutageCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int LINES_OF_A_SCREEN = 60;

    static List<String> demoRooms() {
        return DemoRooms.NAMES;
    }

    private static Said outage(String... further) {
        return Said.by(Stream.concat(Stream.of("outage"), Stream.of(further)).toArray(String[]::new));
    }

    private static JsonNode fitting(Said said) throws IOException {
        JsonNode tree = JSON.readTree(said.out());
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(Path.of("docs/schemas/outage.schema.json").toUri())
                        .validate(tree))
                .isEmpty();
        return tree;
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theJsonFitsItsSchema(String room) throws IOException {
        JsonNode drill = fitting(outage(room, "--json")).path("drill");

        assertThat(drill.path("scene").path("fails").asText()).isEqualTo("mains");
        assertThat(drill.path("scene").path("until_s").asDouble()).isEqualTo(86_400);
        int outlets = drill.path("outlets").size();
        assertThat(drill.path("stretches"))
                .isNotEmpty()
                .allMatch(stretch -> stretch.path("free_air_m3_per_s").size() == outlets);
        int times = drill.path("times_s").size();
        assertThat(drill.path("tanks"))
                .isNotEmpty()
                .filteredOn(tank -> tank.path("likely").has("oxygen_kg_per_m3"))
                .allMatch(tank -> tank.path("likely").path("oxygen_kg_per_m3").size() == times);
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theTextFitsOnAScreenAndSaysToWatchTheFish(String room) {
        Said said = outage(room);

        assertThat(said.exit()).isEqualTo(Exit.FINE);
        assertThat(said.out()).doesNotContain("NaN", "{", "null");
        assertThat(said.out().replaceAll("\\s+", " ")).contains("Estimates to plan by: watch the fish.", "Local codes");
        assertThat(said.out().lines())
                .hasSizeLessThanOrEqualTo(LINES_OF_A_SCREEN)
                .allMatch(line -> line.length() <= 120);
    }

    /** 320 tanks on a screen: some by name, the others counted. */
    @Test
    void aLongRoomNamesTheFirstAndCountsTheRest() {
        assertThat(outage("club-hall", "--hours", "48").out()).containsPattern("And \\d{3} more, later than these");
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
        basement-rainbows, mains, mains
        basement-rainbows, blower:central, blower_stops
        starting-out, airline:FIRST, airline_off
        """)
    void whatFailsIsWhatIsWritten(String room, String word, String kind) throws IOException {
        String outlet = fitting(outage(room, "--json"))
                .path("drill")
                .path("outlets")
                .get(0)
                .asText();
        JsonNode scene = fitting(outage(room, "--fail", word.replace("FIRST", outlet), "--json"))
                .path("drill")
                .path("scene");

        assertThat(scene.path("fails").asText()).isEqualTo(kind);
    }

    /** Every word that is offered for a wrong one may be written. */
    @ParameterizedTest
    @CsvSource({"blower", "circuit", "branch", "hose", "airline"})
    void whatIsOfferedMayBeWritten(String kind) {
        Said wrong = outage("basement-rainbows", "--fail", kind + ":nobody");
        String offered = wrong.err()
                .replaceAll("(?s).*one of (" + kind + ":[^,. ]+).*", "$1")
                .strip();

        assertThat(wrong.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(wrong.err()).contains("'" + kind + ":nobody'");
        assertThat(outage("basement-rainbows", "--fail", offered).exit())
                .as(offered)
                .isEqualTo(Exit.FINE);
    }

    @Test
    void aWordThatIsNearlyRightIsSaid() {
        assertThat(outage("basement-rainbows", "--fail", "blower:centrall").err())
                .contains("'blower:central' (did you mean that?)");
    }

    @Test
    void anotherWordIsToldWhatThereIs() {
        Said said = outage("starting-out", "--fail", "meteor");

        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err()).contains("'meteor'", "mains", "blower:", "airline:");
    }

    @Test
    void aPartThatTheRoomDoesNotHaveIsSaid() {
        assertThat(outage("starting-out", "--fail", "branch:x").err()).contains("no such part");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "745", "NaN", "soon"})
    void hoursThatTellNothingAreRefused(String hours) {
        for (String option : List.of("--hours", "--back")) {
            Said said = outage("starting-out", option, hours);
            assertThat(said.exit()).as(option).isEqualTo(Exit.WRONG_INPUT);
            assertThat(said.err()).contains("Expected");
        }
    }

    /** By hand: back after 6 of 12 hours; 48 parts of 12 h are a quarter of an hour each. */
    @Test
    void theScenePassesThrough() throws IOException {
        JsonNode drill = fitting(outage("starting-out", "--hours", "12", "--back", "6", "--json"))
                .path("drill");

        assertThat(drill.path("scene").path("back_s").asDouble()).isEqualTo(21_600);
        assertThat(drill.path("times_s").get(1).asDouble()).isEqualTo(900);
        assertThat(drill.path("stretches")).hasSize(2);
    }

    /** The garage's valves are filed otherwise than they should be set. */
    @Test
    void asSetIsAnotherRoomThanAsItShouldBe() throws IOException {
        JsonNode be =
                fitting(outage("garage-killifish", "--back", "1", "--json")).path("drill");
        JsonNode is = fitting(outage("garage-killifish", "--back", "1", "--as-set", "--json"))
                .path("drill");

        assertThat(is.path("scene").path("valves").asText()).isEqualTo("as_set");
        assertThat(be.path("scene").path("valves").asText()).isEqualTo("as_they_should_be");
        assertThat(is.path("stretches").get(1).path("free_air_m3_per_s"))
                .isNotEqualTo(be.path("stretches").get(1).path("free_air_m3_per_s"));
    }

    @Test
    void figuresAreInTheUnitsThatAreAskedFor() {
        assertThat(outage("club-hall", "--units", "us").out()).contains(" gal ", "20 ft");
        assertThat(outage("club-hall", "--units", "metric").out()).contains(" L ", "6.1 m");
    }

    @Test
    void theSameRoomGivesTheSameBytes() {
        assertThat(outage("club-hall", "--json").out())
                .isEqualTo(outage("club-hall", "--json").out());
    }

    @Test
    void aRoomWithoutAirIsToldSoInBothShapes(@TempDir Path folder) throws IOException {
        Path room = Files.write(folder.resolve("empty.room.json"), RoomWriter.bytes(Rooms.empty()));

        assertThat(fitting(outage(room.toString(), "--json")).path("drill").isNull())
                .isTrue();
        assertThat(outage(room.toString()).out()).contains("'check' says what is missing");
    }
}
