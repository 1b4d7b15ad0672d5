package lungfish.desktop;

import java.awt.event.KeyEvent;
import lungfish.everyday.Disturbance.Kind;

/** Asks what the others do when the outlets of what is chosen are shut; with nothing chosen, those that run only sometimes. */
final class ShutChosen extends Act {
    private final transient WindowPane window;

    ShutChosen(WindowPane window) {
        super("What if these are shut?…", 'H', menuKey(KeyEvent.VK_K));
        this.window = window;
    }

    @Override
    void act() {
        window.side().ask(window.view().selection().isEmpty() ? Kind.HATCHERY_OFF : Kind.SHUT);
    }
}
