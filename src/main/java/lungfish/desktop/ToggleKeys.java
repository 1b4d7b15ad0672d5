package lungfish.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.awt.event.KeyListener;
import javax.swing.JToggleButton;

/**
 * Takes the arrow keys off toggle buttons before they are dressed anew. Swing gives each of them a listener whenever it is dressed
 * and, where buttons share one look, takes back only the first: after ten changes of the theme an arrow key would be heard by
 * eleven listeners, and walk as many buttons on.
 */
final class ToggleKeys {
    private static final String LEFT_BEHIND = "javax.swing.plaf.basic.BasicButtonUI$KeyHandler";

    private ToggleKeys() {}

    /** Those of all windows. */
    static void takeOff() {
        for (Window window : Window.getWindows()) {
            takeOff(window);
        }
    }

    /** Those of a part and of all that it holds. */
    static void takeOff(Component part) {
        if (part instanceof JToggleButton button) {
            for (KeyListener listener : button.getKeyListeners()) {
                if (LEFT_BEHIND.equals(listener.getClass().getName())) {
                    button.removeKeyListener(listener);
                }
            }
        }
        if (part instanceof Container holder) {
            for (Component child : holder.getComponents()) {
                takeOff(child);
            }
        }
    }
}
