package lungfish.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

final class CommandsTest {
    @Test
    void everyCommandIsMadeByTheNameThatItHas() {
        List<String> own = Commands.askedBy().stream()
                .map(command -> new CommandLine(command).getCommandName())
                .toList();
        assertThat(own).isEqualTo(Commands.NAMES);
    }

    @Test
    void onlyTheCommandThatIsAskedForIsMade() {
        assertThat(Commands.askedBy("sure", "my.room.json")).hasOnlyElementsOfTypes(SureCommand.class);
    }

    @Test
    void helpKnowsOfAll() {
        assertThat(Commands.askedBy("help")).hasSameSizeAs(Commands.NAMES);
        assertThat(Commands.askedBy("--help")).hasSameSizeAs(Commands.NAMES);
    }

    /** With {@code --} before the room the library reads the line: it means the same. */
    @ParameterizedTest
    @ValueSource(strings = {"open", "plan", "check", "blowers"})
    void aPlainLineSaysWhatTheLibraryWouldMakeOfIt(String command) {
        assertThat(Said.by(command, "starting-out")).isEqualTo(Said.by(command, "--", "starting-out"));
        assertThat(Said.by(command, "no such room")).isEqualTo(Said.by(command, "--", "no such room"));
        assertThat(Said.by(command, "").exit())
                .isEqualTo(Said.by(command, "--", "").exit());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-x", "@words"})
    void optionsAreReadByTheLibrary(String word) {
        assertThat(Commands.plainlyAsked("plan", word)).isEmpty();
    }

    /** It needs to be told what file to write. */
    @Test
    void aReportIsNoPlainLine() {
        assertThat(Commands.plainlyAsked("report", "starting-out")).isEmpty();
    }
}
