package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.util.Optional;

/** Shows the drawing larger. */
final class ZoomIn extends Act {
    private final transient WindowPane window;

    ZoomIn(WindowPane window) {
        super("Zoom in", 'I', menuKey(KeyEvent.VK_EQUALS));
        this.window = window;
    }

    @Override
    void act() {
        window.center().canvas().zoom(Canvas.ZOOM_STEP, Optional.empty());
    }
}
