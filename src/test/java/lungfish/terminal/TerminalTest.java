package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

final class TerminalTest {
    @CommandLine.Command(name = "break")
    private static final class Breaking extends Command {
        @Override
        Outcome call() {
            throw new IllegalStateException("broken on purpose");
        }
    }

    @CommandLine.Command(name = "sink")
    private static final class Sinking extends Command {
        @Override
        Outcome call() {
            throw new StackOverflowError("sunk on purpose");
        }
    }

    private static Said faulty(String... args) {
        return Said.by(console -> new Terminal(console, List.of(new Breaking(), new Sinking())).run(args));
    }

    private static JsonNode problem(Said said) throws IOException {
        JsonNode problems = new ObjectMapper().readTree(said.out()).get("problems");
        assertThat(problems.get(0).fieldNames()).toIterable().containsExactly("path", "found", "expected");
        return problems.get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "fly", "plan", "demos --units si", "demos --colour", "schema wall", "demos extra", "help fly"
            })
    void aWrongCommandLineIsWrongInput(String line) {
        Said said = Said.by(line.isEmpty() ? new String[0] : line.split(" "));
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("Expected");
    }

    @Test
    void aWrongCommandLineIsAProblemForPrograms() throws IOException {
        Said said = Said.by("schema", "wall", "--json");
        assertThat(said.exit()).isEqualTo(Exit.WRONG_INPUT);
        assertThat(said.err()).isEmpty();
        assertThat(problem(said).get("found").asText()).contains("'wall'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"help", "--help", "-h", "help demos", "demos --help", "--version", "demos"})
    void whatIsAskedForIsAnswered(String line) {
        Said said = Said.by(line.split(" "));
        assertThat(said.exit()).isEqualTo(Exit.FINE);
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).isNotBlank().endsWith("\n").doesNotContain("\r");
    }

    @Test
    void theVersionIsThatOfTheBuild() {
        assertThat(Said.by("--version").out()).matches("lungfish \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"break", "sink"})
    void aFaultOfTheProgramIsOneLineAndAFile(String command) throws IOException {
        Said said = faulty(command);
        assertThat(said.exit()).isEqualTo(Exit.FAULT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).hasLineCount(1).doesNotContain("\tat ");
        assertThat(details(said.err())).contains("\tat lungfish.terminal.TerminalTest");
    }

    @Test
    void aFaultIsAProblemForPrograms() throws IOException {
        Said said = faulty("break", "--json");
        assertThat(said.exit()).isEqualTo(Exit.FAULT);
        assertThat(said.err()).isEmpty();
        assertThat(details(problem(said).get("found").asText() + ".")).contains("broken on purpose");
    }

    /** Reads the file that a fault names, and removes it. */
    private static String details(String said) throws IOException {
        Path file = Path.of(said.replaceFirst("(?s).*details in (\\S+\\.txt).*", "$1"));
        String details = Files.readString(file);
        Files.delete(file);
        return details;
    }
}
