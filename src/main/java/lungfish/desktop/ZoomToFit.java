package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Shows the whole drawing. */
final class ZoomToFit extends Act {
    private final transient WindowPane window;

    ZoomToFit(WindowPane window) {
        super("Show all", 'A', menuKey(KeyEvent.VK_0));
        this.window = window;
    }

    @Override
    void act() {
        window.center().canvas().fit();
    }
}
