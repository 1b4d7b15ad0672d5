package lungfish.desktop;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/** What keys do in one part of the window, and how tooltips say them. */
final class Keys {
    private Keys() {}

    /** While the part itself has the focus; the key as {@link KeyStroke#getKeyStroke(String)} spells it. */
    static void bind(JComponent part, String key, Runnable does) {
        bind(part, KeyStroke.getKeyStroke(key), key, does);
    }

    /** The same, under a name that says what is done. */
    static void bind(JComponent part, KeyStroke key, String name, Runnable does) {
        bind(part, part.getInputMap(), key, name, does);
    }

    /** While anything in the part has the focus. */
    static void bindWithin(JComponent part, String key, Runnable does) {
        InputMap keys = part.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        bind(part, keys, KeyStroke.getKeyStroke(key), key, does);
    }

    private static void bind(JComponent part, InputMap keys, KeyStroke key, String name, Runnable does) {
        keys.put(key, name);
        part.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    /** " (Ctrl+B)", or nothing. */
    static String inBrackets(@Nullable KeyStroke key) {
        if (key == null) {
            return "";
        }
        String with = InputEvent.getModifiersExText(key.getModifiers());
        return " (" + (with.isEmpty() ? "" : with + "+") + KeyEvent.getKeyText(key.getKeyCode()) + ")";
    }
}
