package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Chooses everything that stands on the floor, or every tank of the rack that is open. */
final class ChooseAll extends Act {
    private final transient WindowPane window;

    ChooseAll(WindowPane window) {
        super("Choose all", 'A', menuKey(KeyEvent.VK_A));
        this.window = window;
    }

    @Override
    void act() {
        window.view().select(window.center().canvas().everything());
    }
}
