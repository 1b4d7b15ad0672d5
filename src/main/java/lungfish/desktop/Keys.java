package lungfish.desktop;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/** Says keys as tooltips do. */
final class Keys {
    private Keys() {}

    /** " (Ctrl+B)", or nothing. */
    static String inBrackets(@Nullable KeyStroke key) {
        if (key == null) {
            return "";
        }
        String with = InputEvent.getModifiersExText(key.getModifiers());
        return " (" + (with.isEmpty() ? "" : with + "+") + KeyEvent.getKeyText(key.getKeyCode()) + ")";
    }
}
