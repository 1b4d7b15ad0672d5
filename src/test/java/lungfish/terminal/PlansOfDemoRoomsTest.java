package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the terminal says of every demo room. */
final class PlansOfDemoRoomsTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** A place in a sentence that nothing filled. */
    private static final String UNFILLED = "\\{\\w+}";

    static List<String> demoRooms() {
        return DemoRooms.NAMES;
    }

    private static JsonSchema schema(String name) {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Path.of("docs/schemas", name).toUri());
    }

    private static void assertFits(String schema, String json) throws IOException {
        assertThat(schema(schema).validate(JSON.readTree(json))).isEmpty();
    }

    @Test
    void everyRoomInTheFolderIsADemo() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-rooms"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".room.json", "")))
                    .containsExactlyInAnyOrderElementsOf(DemoRooms.NAMES);
        }
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void noSentenceHasAnEmptyPlace(String room) {
        for (String units : List.of("us", "metric")) {
            assertThat(Said.by("plan", room, "--why", "--units", units).out()).doesNotContainPattern(UNFILLED);
            assertThat(Said.by("check", room, "--units", units).out()).doesNotContainPattern(UNFILLED);
        }
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void noFigureIsNotANumber(String room) {
        assertThat(Said.by("plan", room, "--why").out()).doesNotContain("NaN", "unknown", "Infinity");
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void thePlanFitsItsSchema(String room) throws IOException {
        assertFits("plan.schema.json", Said.by("plan", room, "--json").out());
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theStagesFitTheirSchemaAndAScreen(String room) throws IOException {
        assertFits("stages.schema.json", Said.by("stages", room, "--json").out());
        assertThat(Said.by("stages", room, "--units", "us").out().lines())
                .hasSizeLessThanOrEqualTo(24)
                .allMatch(line -> line.length() <= 110);
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void everydayDisturbancesFitTheirSchemaAndFillTheirSentences(String room) throws IOException {
        assertFits("everyday.schema.json", Said.by("everyday", room, "--json").out());
        assertFits(
                "everyday.schema.json",
                Said.by("everyday", room, "--do", "shut=A-1-1-a", "--do", "half-drain=A", "--json")
                        .out());
        Said said = Said.by("everyday", room, "--do", "half-drain=A", "--tuned-first");
        assertThat(said.exit()).isEqualTo(Exit.FINE);
        assertThat(said.out()).doesNotContainPattern(UNFILLED).doesNotContain("NaN");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "blowers"})
    void whereThePumpsDoNoBlowerIsToldOfWithoutAWord(String command) {
        assertThat(Said.by(command, "starting-out").out()).containsPattern("No (central )?blower yet");
        assertThat(Said.by(command, "garage-killifish").out()).doesNotContain("blower yet");
    }

    @Test
    void whoNamesNoOutletIsToldWhatMayBeNamed() throws IOException {
        Said said = Said.by("everyday", "starting-out", "--do", "shut=A-1,nobody", "--do", "half-drain=A", "--json");

        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(JSON.readTree(said.out()).at("/problems/0/found").asText()).contains("'nobody'");
        assertThat(JSON.readTree(said.out()).get("problems")).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theNetworkFitsItsSchemaAndIsSolved(String room, @TempDir Path folder) throws IOException {
        String network = Said.by("network", room, "--json").out();
        assertFits("network.schema.json", network);
        Path file = Files.writeString(folder.resolve("network.json"), network);
        Said solved = Said.by("solve", file.toString(), "--json");
        assertThat(solved.exit()).isEqualTo(Exit.FINE);
        assertThat(JSON.readTree(solved.out()).at("/as_set/ok").asBoolean()).isTrue();
        assertThat(JSON.readTree(solved.out()).at("/tuned/ok").asBoolean()).isTrue();
    }

    @Test
    void aNetworkIsWrittenAsTheFileThatSolveReadsUnlessATableIsAskedFor() {
        String file = Said.by("network", "starting-out").out();

        assertThat(file).isEqualTo(Said.by("network", "starting-out", "--json").out());
        assertThat(Said.by("network", "starting-out", "--table").out()).doesNotContain("{");
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theBlowersFitTheirSchema(String room) throws IOException {
        assertFits("blowers.schema.json", Said.by("blowers", room, "--json").out());
    }

    @Test
    void machinesForOtherMainsAreCountedAndNotListed() {
        Said said = Said.by("blowers", "garage-killifish");

        assertThat(said.out()).contains("made for other mains than the room's 230 V.");
        assertThat(said.out()).doesNotContain("120 V");
    }

    /** The hot end of the discharge in the panel, and in the sheet that explains it. */
    @ParameterizedTest
    @MethodSource("demoRooms")
    void thePanelAndItsWhySayTheSameHotEnd(String room) {
        String said = Said.by("plan", room, "--why").out().replaceAll("\\s+", " ");
        Matcher why = Pattern.compile("Why (\\S+ \\S+)\\? Air leaving the blower, hot end")
                .matcher(said);

        assertThat(why.find()).isTrue();
        assertThat(said).containsPattern("The air leaves at \\S+ \\S+ to " + Pattern.quote(why.group(1)) + "\\.");
    }

    /** The plan's figure with valves as filed, and what 'solve' makes of the network that the plan gives away. */
    @ParameterizedTest
    @MethodSource("demoRooms")
    void whoeverSolvesTheNetworkFindsThePlansFigures(String room, @TempDir Path folder) throws IOException {
        double warmAndColdStartsAgree = 1e-6;
        Path file = Files.writeString(
                folder.resolve("network.json"),
                Said.by("network", room, "--json").out());
        JsonNode drops = JSON.readTree(Said.by("solve", file.toString(), "--json", "--mode", "as-set")
                        .out())
                .at("/as_set/drops");
        for (JsonNode outlet :
                JSON.readTree(Said.by("plan", room, "--json").out()).get("outlets")) {
            double planned = outlet.get("as_set_m3_per_s").asDouble();
            double solved = drops.get(outlet.get("id").asText()).get("free_m3s").asDouble();
            assertThat(solved).isCloseTo(planned, within(warmAndColdStartsAgree * planned + 1e-15));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "blowers", "stages", "sure", "network"})
    void runTwiceItSaysTheSame(String command) {
        assertThat(Said.by(command, "garage-killifish", "--json"))
                .isEqualTo(Said.by(command, "garage-killifish", "--json"));
        assertThat(Said.by(command, "garage-killifish")).isEqualTo(Said.by(command, "garage-killifish"));
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void theExitCodeTellsABlockedPlan(String room) throws IOException {
        Said said = Said.by("plan", room, "--json");
        boolean isBlocked = JSON.readTree(said.out()).has("problems");
        assertThat(said.exit()).isEqualTo(isBlocked ? Exit.BLOCKED : Exit.FINE);
    }

    @ParameterizedTest
    @MethodSource("demoRooms")
    void everyWhyAddsUp(String room) throws IOException {
        double ofTheFigure = 1e-9;
        for (JsonNode why : JSON.readTree(Said.by("plan", room, "--json").out()).get("whys")) {
            if (why.get("adding").asText().equals("sum")) {
                double sum = 0;
                for (JsonNode term : why.get("terms")) {
                    sum += term.get("si").asDouble();
                }
                double total = why.get("total_si").asDouble();
                assertThat(sum)
                        .as(why.get("figure").asText())
                        .isCloseTo(total, within(Math.abs(total) * ofTheFigure + 1e-12));
            }
        }
    }
}
