package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Puts an empty room in place of the room in this window: it asks what it should be. */
final class NewRoom extends Act {
    private final transient WindowPane window;

    NewRoom(WindowPane window) {
        super("New room", 'N', menuKey(KeyEvent.VK_N));
        this.window = window;
    }

    @Override
    void act() {
        window.files().startNew();
    }
}
