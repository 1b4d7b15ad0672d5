package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Leads to the field that filters the outlets. */
final class FindOutlet extends Act {
    private final transient WindowPane window;

    FindOutlet(WindowPane window) {
        super("Find an outlet", 'F', menuKey(KeyEvent.VK_F));
        this.window = window;
    }

    @Override
    void act() {
        window.below().find();
    }
}
