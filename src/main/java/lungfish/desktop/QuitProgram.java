package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Closes every window; asks first where something is not saved. */
final class QuitProgram extends Act {
    private final transient WindowPane window;

    QuitProgram(WindowPane window) {
        super("Quit", 'Q', menuKey(KeyEvent.VK_Q));
        this.window = window;
    }

    @Override
    void act() {
        window.home().quit();
    }
}
