package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import lungfish.NeedsDisplay;
import lungfish.edit.BlowerEdits;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about files that are dropped on a window. */
final class FileDropTest {
    @TempDir
    private Path folder;

    /** What a file manager hands over. */
    private record Dragged(List<Path> paths) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return paths.stream().map(Path::toFile).toList();
        }
    }

    private static boolean drop(Bench bench, Transferable what) {
        TransferHandler handler = bench.pane().getTransferHandler();
        var support = new TransferHandler.TransferSupport(bench.pane(), what);
        return handler.canImport(support) && handler.importData(support);
    }

    private Path room() throws IOException {
        return Files.write(folder.resolve("dropped.room.json"), DemoRooms.bytes("garage-killifish"));
    }

    @Test
    void aFileThatIsDroppedIsOpened() throws IOException {
        Bench bench = new Bench(folder, "starting-out");
        assertThat(drop(bench, new Dragged(List.of(room())))).isTrue();
        assertThat(bench.desk().file()).contains(folder.resolve("dropped.room.json"));
        assertThat(bench.desk().room().name()).isEqualTo("Garage killifish");
    }

    @Test
    void aListThatIsDroppedIsLookedAtBeforeItComesIn() throws IOException {
        Bench bench = new Bench(folder, "starting-out");
        Path list = Files.writeString(folder.resolve("tanks.csv"), "Tank,Size\nOne,20 gal long\n");
        assertThat(drop(bench, new Dragged(List.of(list)))).isTrue();
        assertThat(bench.part(TankListTable.class, "tank-list").getRowCount()).isEqualTo(1);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void whatIsNotSavedIsNotLostByADrop() throws IOException {
        Bench bench = new Bench(folder, "starting-out");
        bench.desk().apply(BlowerEdits.shutTheBleed());
        bench.answers().unsaved = Asking.Unsaved.STAY;
        drop(bench, new Dragged(List.of(room())));
        assertThat(bench.desk().file()).isEmpty();
        assertThat(bench.desk().isChanged()).isTrue();
    }

    @Test
    void aTextThatIsDroppedIsNoFile() {
        assertThat(drop(new Bench(folder, "starting-out"), new StringSelection("/room.json")))
                .isFalse();
    }

    /** A part with a drop target of its own would swallow the file: only fields that one types in have one. */
    @Test
    @NeedsDisplay // without one no part has a drop target
    void aFileMayBeDroppedAnywhereOnTheWindow() {
        Bench bench = new Bench(folder, "starting-out");
        bench.pane().side().ask(Subject.DUTY);
        assertThat(Parts.all(bench.pane()).filter(part -> part.getDropTarget() != null))
                .allMatch(part -> part == bench.pane() || part instanceof JTextField)
                .extracting(Component::getClass)
                .isNotEmpty();
        assertThat(Optional.ofNullable(bench.pane().getDropTarget())).isPresent();
    }
}
