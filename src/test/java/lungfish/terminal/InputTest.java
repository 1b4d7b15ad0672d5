package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class InputTest {
    @TempDir
    Path folder = Path.of("");

    private static JsonNode problems(Said said) throws IOException {
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err()).isEmpty();
        return new ObjectMapper().readTree(said.out()).get("problems");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "blowers", "stages", "network", "solve"})
    void aFileThatIsNotThereIsAProblem(String command) throws IOException {
        String nowhere = folder.resolve("nowhere.json").toString();
        assertThat(problems(Said.by(command, nowhere, "--json"))
                        .get(0)
                        .get("found")
                        .asText())
                .isEqualTo("there is no '" + nowhere + "'");
        assertThat(Said.by(command, nowhere).err()).contains(nowhere);
    }

    @Test
    void aFolderIsAProblem() throws IOException {
        assertThat(problems(Said.by("plan", folder.toString(), "--json"))
                        .get(0)
                        .get("found")
                        .asText())
                .endsWith("is a folder");
    }

    @Test
    void aNameThatNoFileCanHaveIsAProblem() throws IOException {
        assertThat(problems(Said.by("plan", "a\0b", "--json"))).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "null", "[]", "{}", "{\"format\": \"air-network-1\"}", "\u0000\u0001"})
    void whatIsNoRoomIsAProblem(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("room.json"), text);
        assertThat(problems(Said.by("plan", file.toString(), "--json"))).isNotEmpty();
        assertThat(problems(Said.by("solve", file.toString(), "--json"))).isNotEmpty();
    }

    @Test
    void aDemoRoomIsKnownByItsName() {
        assertThat(Said.by("plan", "starting-out").out()).startsWith("Starting out\n");
    }

    @Test
    void theRoomsOwnUnitsAreShownUnlessOthersAreAskedFor() {
        assertThat(Said.by("plan", "garage-killifish").out()).contains(" kPa").doesNotContain(" psi");
        assertThat(Said.by("plan", "garage-killifish", "--units", "us").out())
                .contains(" psi")
                .doesNotContain(" kPa.");
    }

    @Test
    void everyProblemOfARoomIsToldAtOnceWithItsPlace() throws IOException {
        String room = Input.text("demo-rooms/starting-out.room.json")
                .replace("\"length_m\": ", "\"length_m\": -")
                .replace("\"display_units\": \"metric\"", "\"display_units\": \"furlongs\"");
        Path file = Files.writeString(folder.resolve("room.json"), room);
        Said said = Said.by("check", file.toString(), "--json");
        assertThat(problems(said))
                .extracting(problem -> problem.get("path").asText())
                .contains("/display_units", "/shell/length_m");
        assertThat(Said.by("check", file.toString()).err()).contains("/display_units: ", "/shell/length_m: ");
    }

    /** Thirty outlets on a pump of the 2 L/min class. */
    private String farTooSmall() throws IOException {
        String room = Input.text("demo-rooms/garage-killifish.room.json")
                .replace("\"role\": \"planned\",", "\"role\": \"planned\", \"machine\": \"small-diaphragm-2\",");
        return Files.writeString(folder.resolve("room.json"), room).toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "check", "blowers", "stages", "network"})
    void aRoomWhoseBlowerIsFarTooSmallIsBlocked(String command) throws IOException {
        assertThat(Said.by(command, farTooSmall()).exit()).isEqualTo(Exit.BLOCKED);
    }

    @Test
    void aBlockedPlanHasItsBlockingFindingsAmongTheProblems() throws IOException {
        JsonNode plan = new ObjectMapper()
                .readTree(Said.by("plan", farTooSmall(), "--json").out());
        assertThat(plan.get("problems"))
                .isNotEmpty()
                .allSatisfy(problem -> assertThat(problem.get("found").asText()).isNotBlank());
        assertThat(plan.get("findings").get(0).get("severity").asText()).isEqualTo("blocking");
    }

    @Test
    void aNetworkThatCannotBeSolvedSaysWhy() throws IOException {
        Path file = Files.writeString(
                folder.resolve("network.json"),
                """
                {"format": "air-network-1", "nodes": ["a", "b"], "pipes": [],
                 "drops": [{"id": "d", "node": "a", "valve_k": 1e11, "depth_m": 0.3, "target_m3s": 2e-5}],
                 "sources": [{"id": "s", "node": "b", "type": "fixed", "gauge_pa": 9000}]}
                """);
        Said said = Said.by("solve", file.toString(), "--json");
        assertThat(said.exit()).isEqualTo(Exit.BLOCKED);
        JsonNode answer = new ObjectMapper().readTree(said.out());
        assertThat(answer.at("/as_set/ok").asBoolean(true)).isFalse();
        assertThat(answer.get("problems"))
                .extracting(problem -> problem.get("path").asText(), problem -> problem.get("found"))
                .contains(tuple("/as_set", answer.at("/as_set/reason")));
        assertThat(Said.by("solve", file.toString()).exit()).isEqualTo(Exit.BLOCKED);
    }
}
