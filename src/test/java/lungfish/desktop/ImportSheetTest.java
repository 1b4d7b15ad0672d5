package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JList;
import lungfish.room.Rack;
import lungfish.room.Tank;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list of tanks in its sheet: looked at, mended, brought in. */
final class ImportSheetTest {
    private static final String LIST =
            """
            Tank;Rack;Shelf;Length (cm);Width (cm);Height (cm);Filter
            Fry 1;Fry;1;40;25;25;sponge-small
            Fry 2;Fry;1;40 kg;25;25;sponge-small
            Fry 3;Fry;2;40;25;25;sponge
            """;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "starting-out");

    @BeforeEach
    void aRoomIsOpen() {
        bench = new Bench(folder, "starting-out");
    }

    private void open(String text) throws IOException {
        bench.answers().list = Optional.of(Files.writeString(folder.resolve("tanks.csv"), text));
        bench.act(ImportTanks.class);
        bench.part(JButton.class, "choose-list").doClick(0);
    }

    private TankListTable table() {
        return bench.part(TankListTable.class, "tank-list");
    }

    private JButton take() {
        return bench.part(JButton.class, "import");
    }

    private Optional<Rack> rack() {
        return bench.desk().room().racks().stream()
                .filter(rack -> rack.name().equals("Fry"))
                .findFirst();
    }

    @Test
    void everyBadCellIsMarkedAndToldAndTheRestCanBeTaken() throws IOException {
        open(LIST);
        assertThat(Parts.cellText(table(), 1, 4)).isEqualTo("× 40 kg");
        assertThat(Parts.cellText(table(), 2, 7)).isEqualTo("× sponge");
        assertThat(Parts.cellText(table(), 1, 0)).isEqualTo("× 3");
        assertThat(bench.part(JList.class, "bad-rows").getModel().getSize()).isEqualTo(2);
        assertThat(take().getText()).isEqualTo("Import 1 of 3 tanks");
        take().doClick(0);
        assertThat(rack().orElseThrow().tanks()).extracting(Tank::name).containsExactly("Fry 1");
        assertThat(bench.pane().side().isSheetOpen()).isFalse();
    }

    @Test
    void mendedInThePreviewAllComeInByOneStep() throws IOException {
        open(LIST);
        table().setValueAt("40", 1, 4);
        assertThat(Parts.cellText(table(), 1, 4)).isEqualTo("40");
        table().setValueAt("sponge-small", 2, 7);
        assertThat(take().getText()).isEqualTo("Import all 3 tanks");
        take().doClick(0);
        assertThat(rack().orElseThrow().tanks()).extracting(Tank::name).containsExactly("Fry 1", "Fry 2", "Fry 3");
        assertThat(bench.desk().history().toUndo()).contains("Import 3 tanks");
        bench.act(UndoEdit.class);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void theMeaningOfAColumnIsChosenAboveIt() throws IOException {
        open(LIST.replace("Filter", "What bubbles"));
        JComboBox<?> meaning = bench.part(JComboBox.class, "meaning 7");
        assertThat(String.valueOf(meaning.getSelectedItem())).isEqualTo("– left out –");
        assertThat(bench.part(JList.class, "bad-rows").getModel().getSize()).isEqualTo(1);
        meaning.setSelectedIndex(meaning.getItemCount() - 1);
        assertThat(bench.part(JList.class, "bad-rows").getModel().getSize())
                .as("'sponge' is told now")
                .isEqualTo(2);
    }

    @Test
    void aComplaintLeadsToItsCell() throws IOException {
        open(LIST);
        bench.part(JList.class, "bad-rows").setSelectedIndex(1);
        assertThat(table().getSelectedRow()).isEqualTo(2);
        assertThat(table().getSelectedColumn()).isEqualTo(7);
    }

    @Test
    void whatWasMendedIsThereAgainAfterTheSheetWasLeft() throws IOException {
        open(LIST);
        table().setValueAt("44", 1, 4);
        bench.part(JButton.class, "back").doClick(0);
        bench.act(ImportTanks.class);
        assertThat(Parts.cellText(table(), 1, 4)).isEqualTo("44");
    }

    @Test
    void aFileThatIsNoListIsToldAndTheListThatWasThereStays() throws IOException {
        open(LIST);
        open("\n\n");
        assertThat(bench.part(Paragraph.class, "import-trouble").getText()).contains("tanks.csv");
        assertThat(table().getRowCount()).isEqualTo(3);
    }

    @Test
    void aListOnTheClipboardIsPastedIntoTheRoom() {
        TextClip.put(LIST);
        bench.act(PasteCopied.class);
        assertThat(table().getRowCount()).isEqualTo(3);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void theOutletsAreExportedUnderTheirHeadings() throws IOException {
        Path file = folder.resolve("outlets.csv");
        bench.answers().save = Optional.of(file);
        bench.act(ExportOutlets.class);
        assertThat(Files.readAllLines(file))
                .hasSize(1 + bench.desk().room().seats().size())
                .first()
                .asString()
                .startsWith("State,Outlet,Tank,Device,Depth,Target,Gets");
    }
}
