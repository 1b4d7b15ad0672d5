package lungfish.desktop;

import java.nio.file.Path;
import java.util.Optional;

/** What a window must ask the person and wait for: files, and whether to save. */
interface Asking {
    /** What to do with a room that is not saved. */
    enum Unsaved {
        SAVE,
        DROP,
        STAY
    }

    /** A file to open; empty if the person thought better of it. */
    Optional<Path> toOpen();

    /** A file to save to; empty if the person thought better of it. */
    Optional<Path> toSave(String name);

    Unsaved unsaved(String name);
}
