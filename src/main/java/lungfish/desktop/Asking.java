package lungfish.desktop;

import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.nio.file.Path;
import java.util.Map;
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

    /** Sends pages to a printer, and waits until it has them. */
    @FunctionalInterface
    interface Printing {
        void print() throws PrinterException;
    }

    /** A file to open; empty if the person thought better of it. */
    Optional<Path> toOpen();

    /** A file to save to; empty if the person thought better of it. */
    Optional<Path> toSave(String name);

    /** A list of tanks to read. */
    Optional<Path> toOpenList();

    /** A file to write a table to. */
    Optional<Path> toSaveTable(String name);

    /** A file to write pages to. */
    Optional<Path> toSavePdf(String name);

    /**
     * A file to write to, of one of several kinds.
     *
     * @param kinds what each is called, by the ending that its name has; the first is what is meant where none is typed
     */
    Optional<Path> toSaveAs(String name, Map<String, String> kinds);

    /** Which printer, and how many; empty if the person thought better of it, or there is no printer. */
    Optional<Printing> toPrint(Pageable pages, String title);

    Unsaved unsaved(String name);

    /** What to do where another program has changed the file since it was opened here. */
    Elsewhere changedElsewhere(String file);
}
