package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Leads to the outlets. */
final class ShowOutlets extends Act {
    private final transient WindowPane window;

    ShowOutlets(WindowPane window) {
        super("Outlets", 'O', menuKey(KeyEvent.VK_L));
        this.window = window;
    }

    @Override
    void act() {
        window.below().showOutlets();
    }
}
