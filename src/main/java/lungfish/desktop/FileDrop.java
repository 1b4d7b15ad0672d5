package lungfish.desktop;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import javax.swing.TransferHandler;

/** A room file that is dropped on the window is opened in it. */
final class FileDrop extends TransferHandler {
    private final transient WindowFiles files;

    FileDrop(WindowFiles files) {
        this.files = files;
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
            dropped.stream().limit(1).forEach(file -> files.open(((File) file).toPath()));
            return !dropped.isEmpty();
        } catch (UnsupportedFlavorException | IOException e) {
            return false; // what was dragged is gone: nothing to open, and nothing lost
        }
    }
}
