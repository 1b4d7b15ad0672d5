package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Leads to the fields of what is chosen. */
final class ShowChosen extends Act {
    private final transient WindowPane window;

    ShowChosen(WindowPane window) {
        super("What is chosen", 'W', menuKey(KeyEvent.VK_I));
        this.window = window;
    }

    @Override
    void act() {
        window.showChosen();
    }
}
