package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Gives the chosen rows of the outlets table what the first of them has in the chosen columns. */
final class FillDown extends Act {
    private final transient WindowPane window;

    FillDown(WindowPane window) {
        super("Fill down the outlets", 'F', shiftMenuKey(KeyEvent.VK_D));
        this.window = window;
    }

    @Override
    void act() {
        window.below().edits().fillDown();
    }
}
