package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens the front of the chosen rack, or of the rack in which the chosen part stands. */
final class OpenRack extends Act {
    private final transient WindowPane window;

    OpenRack(WindowPane window) {
        super("Open the rack", 'R', menuKey(KeyEvent.VK_R));
        this.window = window;
    }

    @Override
    void act() {
        window.center().openChosenRack();
    }
}
