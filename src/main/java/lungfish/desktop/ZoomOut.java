package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Optional;

/** Shows the drawing smaller. */
final class ZoomOut extends Act {
    private final transient WindowPane window;

    ZoomOut(WindowPane window) {
        super("Zoom out", 'O', menuKey(KeyEvent.VK_MINUS));
        this.window = window;
    }

    @Override
    void act() {
        window.center().canvas().zoom(1 / Canvas.ZOOM_STEP, Optional.empty());
    }
}
