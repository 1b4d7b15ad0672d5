package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JButton;
import lungfish.edit.ClimateEdits;
import lungfish.edit.Edit;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The strip that offers what a crash left. */
final class RecoveryStripTest {
    private static final Edit WARMER = ClimateEdits.temperatureK(OptionalDouble.of(301));

    /** Beyond the number of any process. */
    private static final String NOBODY = "1099511627776";

    @TempDir
    Path folder;

    private Path file;
    private Room before;
    private Bench bench = new Bench(Path.of(""), "starting-out");

    /** As after a crash: the autosave of an edit, kept by a process that is not there. */
    @BeforeEach
    void aFileWithWhatACrashLeft() throws IOException {
        file = Files.write(folder.resolve("mine.room.json"), DemoRooms.bytes("garage-killifish"));
        Bench cutOff = new Bench(folder.resolve("config"), "starting-out");
        cutOff.desk().open(file);
        before = cutOff.desk().room();
        cutOff.desk().apply(WARMER);
        for (Path left : autosaves()) {
            Files.writeString(left, Files.readString(left).replaceFirst("\"process\": \\d+", "\"process\": " + NOBODY));
        }
        bench = new Bench(folder.resolve("config"), "starting-out");
    }

    private List<Path> autosaves() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(path -> path.toString().endsWith(".autosave")).toList();
        }
    }

    private RecoveryStrip strip() {
        return bench.part(RecoveryStrip.class, "recovery");
    }

    private void press(String button) {
        bench.part(JButton.class, button).doClick(0);
    }

    @Test
    void itIsNotThereWhereNothingWasLeft() throws IOException {
        for (Path left : autosaves()) {
            Files.delete(left);
        }
        bench.desk().open(file);
        assertThat(strip().isVisible()).isFalse();
    }

    @Test
    void itSaysWhichFileAndWhatWasDoneLast() {
        bench.desk().open(file);
        assertThat(strip().isVisible()).isTrue();
        assertThat(bench.part(Paragraph.class, "recovery-words").getText())
                .startsWith("mine.room.json, ")
                .contains(WARMER.done());
    }

    @Test
    void theChangesAreTakenAndUndone() {
        bench.desk().open(file);
        press("take-recovered");
        assertThat(bench.desk().room()).isEqualTo(WARMER.of(before));
        assertThat(bench.desk().isChanged()).isTrue();
        assertThat(strip().isVisible()).isFalse();
        bench.act(UndoEdit.class);
        assertThat(bench.desk().room()).isEqualTo(before);
    }

    @Test
    void whatIsOnTheDeskIsNotLostForThemWithoutAsking() {
        bench.desk().open(file);
        bench.desk().recovery().leave();
        bench.desk().openDemo("starting-out");
        bench.desk().recovery().look();
        bench.desk().apply(WARMER);
        Room mine = bench.desk().room();
        bench.answers().unsaved = Asking.Unsaved.STAY;
        press("take-recovered");
        assertThat(bench.desk().room()).isEqualTo(mine);
        assertThat(strip().isVisible()).isTrue();
        bench.answers().unsaved = Asking.Unsaved.DROP;
        press("take-recovered");
        assertThat(bench.desk().room()).isEqualTo(WARMER.of(before));
    }

    @Test
    void theyAreLeftOrThrownAway() throws IOException {
        bench.desk().open(file);
        press("leave-recovered");
        assertThat(strip().isVisible()).isFalse();
        assertThat(autosaves()).isNotEmpty();
        bench.desk().open(file);
        press("discard-recovered");
        assertThat(strip().isVisible()).isFalse();
        assertThat(autosaves()).isEmpty();
    }

    @Test
    void whatCannotBeReadCannotBeTaken() throws IOException {
        for (Path left : autosaves()) {
            Files.writeString(left, "garbage");
        }
        bench.desk().open(file);
        assertThat(bench.part(JButton.class, "take-recovered").isVisible()).isFalse();
        assertThat(bench.part(Paragraph.class, "recovery-words").getText()).contains(".autosave", "not whole");
        press("leave-recovered");
        assertThat(autosaves()).isNotEmpty();
    }

    @Test
    void aFileThatAnotherProgramChangedIsAskedAboutBeforeItIsReplaced() throws IOException {
        bench.desk().open(file);
        bench.desk().apply(WARMER);
        Files.write(file, DemoRooms.bytes("starting-out"));
        bench.act(SaveRoom.class);
        assertThat(file).hasBinaryContent(DemoRooms.bytes("starting-out"));
        bench.answers().elsewhere = Asking.Elsewhere.REPLACE;
        bench.act(SaveRoom.class);
        assertThat(Files.readString(file)).contains("Garage killifish");
        assertThat(bench.desk().isChanged()).isFalse();
    }
}
