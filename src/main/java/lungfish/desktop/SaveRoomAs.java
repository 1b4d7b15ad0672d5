package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Saves the room to another file. */
final class SaveRoomAs extends Act {
    private final transient WindowPane window;

    SaveRoomAs(WindowPane window) {
        super("Save as…", 'A', shiftMenuKey(KeyEvent.VK_S));
        this.window = window;
    }

    @Override
    void act() {
        window.files().saveAs(() -> {});
    }
}
