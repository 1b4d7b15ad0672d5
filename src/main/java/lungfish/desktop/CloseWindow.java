package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Closes this window; asks first where something is not saved. */
final class CloseWindow extends Act {
    private final transient WindowPane window;

    CloseWindow(WindowPane window) {
        super("Close window", 'C', menuKey(KeyEvent.VK_W));
        this.window = window;
    }

    @Override
    void act() {
        window.close();
    }
}
