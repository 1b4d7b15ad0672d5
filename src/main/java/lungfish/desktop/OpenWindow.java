package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens another window, with an empty room. */
final class OpenWindow extends Act {
    private final transient WindowPane window;

    OpenWindow(WindowPane window) {
        super("New window", 'W', shiftMenuKey(KeyEvent.VK_N));
        this.window = window;
    }

    @Override
    void act() {
        window.home().openWindow(window.view().desk().units());
    }
}
