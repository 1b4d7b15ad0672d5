package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Leads to what the plan assumes because the room does not say it. */
final class ShowAssumed extends Act {
    private final transient WindowPane window;

    ShowAssumed(WindowPane window) {
        super("What is assumed", 'M', menuKey(KeyEvent.VK_M));
        this.window = window;
    }

    @Override
    void act() {
        window.below().showAssumed();
    }
}
