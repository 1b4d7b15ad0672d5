package lungfish.desktop;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;

/** Something that the person can do, with its name, its letter in the menu, its key, and when it can be done. */
abstract class Act extends AbstractAction {
    Act(String name, char letter, @Nullable KeyStroke key) {
        super(name);
        putValue(Action.MNEMONIC_KEY, KeyEvent.getExtendedKeyCodeForChar(letter));
        putValue(Action.ACCELERATOR_KEY, key);
    }

    /** The key that this system uses for menus, with another. */
    static KeyStroke menuKey(int key) {
        return KeyStroke.getKeyStroke(key, menuMask());
    }

    /** The same with Shift. */
    static KeyStroke shiftMenuKey(int key) {
        return KeyStroke.getKeyStroke(key, menuMask() | InputEvent.SHIFT_DOWN_MASK);
    }

    /** What the menu key is called: "Ctrl" on most systems. */
    static String menuKeyWord() {
        return InputEvent.getModifiersExText(menuMask());
    }

    static int menuMask() {
        return GraphicsEnvironment.isHeadless()
                ? InputEvent.CTRL_DOWN_MASK
                : Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
    }

    final String name() {
        return String.valueOf(getValue(Action.NAME));
    }

    final void rename(String name) {
        putValue(Action.NAME, name);
    }

    final @Nullable KeyStroke key() {
        return (KeyStroke) getValue(Action.ACCELERATOR_KEY);
    }

    @Override
    public final void actionPerformed(ActionEvent event) {
        act();
    }

    abstract void act();
}
