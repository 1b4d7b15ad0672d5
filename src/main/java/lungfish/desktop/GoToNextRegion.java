package lungfish.desktop;

import java.awt.event.KeyEvent;
import javax.swing.KeyStroke;

/** Takes the focus to the next region of the window. */
final class GoToNextRegion extends Act {
    private final transient WindowPane window;

    GoToNextRegion(WindowPane window) {
        super("Next region", 'N', KeyStroke.getKeyStroke(KeyEvent.VK_F6, 0));
        this.window = window;
    }

    @Override
    void act() {
        window.regions().step(1);
    }
}
