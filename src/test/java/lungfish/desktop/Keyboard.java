package lungfish.desktop;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.KeyStroke;

/** Which keys a person presses, on the US keyboard that a virtual display has. */
final class Keyboard {
    private Keyboard() {}

    static KeyStroke of(int character) {
        int shift = InputEvent.SHIFT_DOWN_MASK;
        return switch (character) {
            case '_' -> KeyStroke.getKeyStroke(KeyEvent.VK_MINUS, shift);
            case ':' -> KeyStroke.getKeyStroke(KeyEvent.VK_SEMICOLON, shift);
            case '"' -> KeyStroke.getKeyStroke(KeyEvent.VK_QUOTE, shift);
            default ->
                KeyStroke.getKeyStroke(
                        KeyEvent.getExtendedKeyCodeForChar(character), Character.isUpperCase(character) ? shift : 0);
        };
    }

    /** Those that are held down while the key is pressed. */
    static List<Integer> modifiers(KeyStroke chord) {
        List<Integer> held = new ArrayList<>();
        addIf(chord, InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_CONTROL, held);
        addIf(chord, InputEvent.META_DOWN_MASK, KeyEvent.VK_META, held);
        addIf(chord, InputEvent.ALT_DOWN_MASK, KeyEvent.VK_ALT, held);
        addIf(chord, InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_SHIFT, held);
        return held;
    }

    private static void addIf(KeyStroke chord, int mask, int key, List<Integer> held) {
        if ((chord.getModifiers() & mask) != 0) {
            held.add(key);
        }
    }
}
