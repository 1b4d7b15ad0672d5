package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Saves the room to its file, or asks for one. */
final class SaveRoom extends Act {
    private final transient WindowPane window;

    SaveRoom(WindowPane window) {
        super("Save", 'S', menuKey(KeyEvent.VK_S));
        this.window = window;
    }

    @Override
    void act() {
        window.files().save(() -> {});
    }
}
