package lungfish.desktop;

import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** From the front of a rack to that of the next one. */
final class NextRack extends Act {
    private final transient WindowPane window;

    NextRack(WindowPane window) {
        super("Next rack", 'X', KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_DOWN, 0));
        this.window = window;
    }

    @Override
    void act() {
        window.center().stepRack(1);
    }
}
