package lungfish.desktop;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Takes the focus to the region before. */
final class GoToPreviousRegion extends Act {
    private final transient WindowPane window;

    GoToPreviousRegion(WindowPane window) {
        super("Previous region", 'P', KeyStroke.getKeyStroke(KeyEvent.VK_F6, InputEvent.SHIFT_DOWN_MASK));
        this.window = window;
    }

    @Override
    void act() {
        window.regions().step(-1);
    }
}
