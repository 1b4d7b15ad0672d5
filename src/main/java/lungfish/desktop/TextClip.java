package lungfish.desktop;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;

/** Text on the clipboard that all programs share; without a display, on one of our own. */
final class TextClip {
    private static final Clipboard OWN = new Clipboard("without a display");

    private TextClip() {}

    private static Clipboard clipboard() {
        return GraphicsEnvironment.isHeadless()
                ? OWN
                : Toolkit.getDefaultToolkit().getSystemClipboard();
    }

    static void put(String text) {
        clipboard().setContents(new StringSelection(text), null);
    }

    /** What is there; empty where it is no text, or where its owner has gone. */
    static String text() {
        try {
            return String.valueOf(clipboard().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
            return ""; // nothing that could be pasted
        }
    }
}
