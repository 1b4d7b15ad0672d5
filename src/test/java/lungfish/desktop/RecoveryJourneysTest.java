package lungfish.desktop;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import lungfish.NeedsDisplay;
import lungfish.desk.Desk;
import lungfish.room.Rack;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window is killed in the middle of work, started again, and the work is there. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class RecoveryJourneysTest {
    @TempDir
    private Path folder;

    /** Walks to the first rack by the arrow keys, and moves it two steps: the second may be lost. */
    static void editByKeys(Person person) {
        person.press("RIGHT");
        person.until("the first rack", () -> !person.pane().view().selection().isEmpty());
        person.press("alt DOWN");
        person.until("a step", () -> person.pane().view().desk().history().at() == 1);
        person.press("alt DOWN");
        person.until("another", () -> person.pane().view().desk().history().at() == 2);
    }

    private static List<Rack> racks(Person person) {
        return person.see(() -> person.pane().view().desk().room().racks());
    }

    /** Starts the window, lets its person work, and kills it: gives the last thing that was done. */
    private String killed() throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process child = new ProcessBuilder(java, "-cp", classPath, KilledWindow.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = new BufferedReader(new InputStreamReader(child.getInputStream(), UTF_8))) {
            return String.valueOf(said.readLine());
        } finally {
            child.destroyForcibly().waitFor();
        }
    }

    @Test
    void whatWasDoneBeforeTheKillIsTakenUpAgain() throws IOException, InterruptedException {
        String done = killed();
        try (Person person = new Person(folder, Optional.empty())) {
            List<Rack> asFiled = racks(person);
            JButton take = person.part(JButton.class, "take-recovered");
            Paragraph words = person.part(Paragraph.class, "recovery-words");
            assertThat(person.<String>see(words::getText)).contains(done);
            person.click(take);
            person.until(
                    "the work of before",
                    () -> desk(person).isChanged() && desk(person).isCurrent());
            assertThat(racks(person)).isNotEqualTo(asFiled).hasSameSizeAs(asFiled);
            assertThat(person.<Boolean>see(() -> Parts.find(person.window(), RecoveryStrip.class, "recovery")
                            .orElseThrow()
                            .isVisible()))
                    .isFalse();
        }
    }

    private static Desk desk(Person person) {
        return person.pane().view().desk();
    }
}
