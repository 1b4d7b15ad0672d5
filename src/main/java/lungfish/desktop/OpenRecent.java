package lungfish.desktop;

import java.nio.file.Path;

/** Opens a room file that was lately open. */
final class OpenRecent extends Act {
    private final transient WindowPane window;
    private final transient Path file;

    OpenRecent(WindowPane window, Path file) {
        super(String.valueOf(file.getFileName()), 'R', null);
        this.window = window;
        this.file = file;
        putValue(SHORT_DESCRIPTION, file.toString());
    }

    @Override
    void act() {
        window.files().open(file);
    }
}
