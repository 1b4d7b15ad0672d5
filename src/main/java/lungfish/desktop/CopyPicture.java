package lungfish.desktop;

import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import lungfish.desk.Hands;

/** Puts a picture of the room where other programs can paste it. */
final class CopyPicture extends Act {
    private final transient WindowPane window;

    CopyPicture(WindowPane window) {
        super("Copy a picture of the room", 'Y', shiftMenuKey(KeyEvent.VK_Y));
        this.window = window;
    }

    @Override
    void act() {
        ReportOfRoom report = ReportOfRoom.of(window.view());
        Hands hands = window.view().desk().shared().hands();
        hands.ahead().execute(() -> {
            BufferedImage image = report.image();
            hands.front().execute(() -> put(image));
        });
    }

    private void put(BufferedImage image) {
        Clipboard clipboard = Toolkit.getDefaultToolkit().getSystemClipboard();
        clipboard.setContents(new Picture(image), null);
        window.view().say(java.util.Optional.of("A picture of the room is on the clipboard."));
    }

    /** A picture as other programs ask for it. */
    record Picture(Image image) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.imageFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return DataFlavor.imageFlavor.equals(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
            if (!isDataFlavorSupported(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            return image;
        }
    }
}
