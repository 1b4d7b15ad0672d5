package lungfish.desktop;

import java.awt.event.KeyEvent;
import lungfish.everyday.Disturbance.Kind;

/** Asks what happens when half of the water goes out of the tanks of what is chosen; with nothing chosen, out of all. */
final class HalfDrainChosen extends Act {
    private final transient WindowPane window;

    HalfDrainChosen(WindowPane window) {
        super("Half drain…", 'F', shiftMenuKey(KeyEvent.VK_H));
        this.window = window;
    }

    @Override
    void act() {
        window.side().ask(Kind.HALF_DRAIN);
    }
}
