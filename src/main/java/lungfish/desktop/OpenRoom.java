package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Opens a room file in place of the room in this window. */
final class OpenRoom extends Act {
    private final transient WindowPane window;

    OpenRoom(WindowPane window) {
        super("Open…", 'O', menuKey(KeyEvent.VK_O));
        this.window = window;
    }

    @Override
    void act() {
        window.files().open();
    }
}
