package lungfish.desktop;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.TransferHandler;

/** A room file that is dropped on the window is opened in it; a list of tanks is looked at before it comes into the room. */
final class FileDrop extends TransferHandler {
    private final transient WindowFiles files;
    private final transient TankImports imports;

    FileDrop(WindowFiles files, TankImports imports) {
        this.files = files;
        this.imports = imports;
    }

    private void take(Path file) {
        if (TankImports.isList(file)) {
            imports.open(file);
        } else {
            files.open(file);
        }
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            List<?> dropped = (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            dropped.stream().limit(1).forEach(file -> take(((File) file).toPath()));
            return !dropped.isEmpty();
        } catch (UnsupportedFlavorException | IOException e) {
            return false; // what was dragged is gone: nothing to open, and nothing lost
        }
    }
}
