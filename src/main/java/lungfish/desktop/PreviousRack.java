package lungfish.desktop;

import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** From the front of a rack to that of the previous one. */
final class PreviousRack extends Act {
    private final transient WindowPane window;

    PreviousRack(WindowPane window) {
        super("Previous rack", 'V', KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_UP, 0));
        this.window = window;
    }

    @Override
    void act() {
        window.center().stepRack(-1);
    }
}
