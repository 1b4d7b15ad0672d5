package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens the list of blowers. */
final class ChooseBlower extends Act {
    private final transient WindowPane window;

    ChooseBlower(WindowPane window) {
        super("Choose the blower…", 'B', menuKey(KeyEvent.VK_B));
        this.window = window;
    }

    @Override
    void act() {
        window.side().open(new BlowerSheet(window.view(), window.side()));
    }
}
