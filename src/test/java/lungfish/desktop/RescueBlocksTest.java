package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JTextArea;
import lungfish.room.Blower;
import lungfish.room.Room;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What keeps them alive, on the outage sheet: the basement has a battery for its mains, and nothing for its blower. */
final class RescueBlocksTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder, "basement-rainbows");
        bench.ask(Question.OUTAGE);
    }

    private List<String> texts() {
        return Arrays.stream(bench.part(RescueBlocks.class, "rescue-blocks").getComponents())
                .filter(JTextArea.class::isInstance)
                .map(each -> ((JTextArea) each).getText())
                .toList();
    }

    private Room room() {
        return bench.desk().room();
    }

    @Test
    void theCheapestSetIsPutIntoTheRoomByOneClickAndTakenBackByOneUndo() {
        Room before = room();

        bench.part(JButton.class, "rescue-all").doClick();
        assertThat(room().blowers(Blower.Role.STANDBY)).hasSize(1);
        bench.part(JCheckBox.class, "rescue-each").doClick(); // no window follows the desk here: it asks anew
        assertThat(texts()).anyMatch(text -> text.startsWith("The room as it is keeps all"));

        bench.desk().undo();
        assertThat(room()).isEqualTo(before);
    }

    @Test
    void eachMeansIsListedWhenAskedForWithWhatItIsNoHelpAgainst() {
        assertThat(texts()).noneMatch(text -> text.contains("No help against"));

        bench.part(JCheckBox.class, "rescue-each").doClick();
        assertThat(texts()).anyMatch(text -> text.contains("No help against a blower that stops"));
    }

    @Test
    void whereABatteryIsAddedItsCautionStandsBeside() {
        assertThat(texts())
                .anyMatch(text -> text.contains("outdoors only"))
                .anyMatch(text -> text.contains("fuse each"));
    }
}
