package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens another window with a demo room. */
final class OpenWindow extends Act {
    private final transient WindowPane window;

    OpenWindow(WindowPane window) {
        super("New window", 'N', menuKey(KeyEvent.VK_N));
        this.window = window;
    }

    @Override
    void act() {
        window.home().openDemo();
    }
}
