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

    /** What to do with a file that another program has changed. */
    enum Elsewhere {
        REPLACE,
        SAVE_AS,
        STAY
    }

    /** A file to open; empty if the person thought better of it. */
    Optional<Path> toOpen();

    /** A file to save to; empty if the person thought better of it. */
    Optional<Path> toSave(String name);

    /** A list of tanks to read. */
    Optional<Path> toOpenList();

    /** A file to write a table to. */
    Optional<Path> toSaveTable(String name);

    Unsaved unsaved(String name);

    /** What to do where another program has changed the file since it was opened here. */
    Elsewhere changedElsewhere(String file);
}
