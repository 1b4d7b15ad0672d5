package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Copies the chosen block of the outlets table for a spreadsheet, under its headings. */
final class CopyWithHeadings extends Act {
    private final transient WindowPane window;

    CopyWithHeadings(WindowPane window) {
        super("Copy the outlets with headings", 'H', shiftMenuKey(KeyEvent.VK_C));
        this.window = window;
    }

    @Override
    void act() {
        window.below().edits().copy(true);
    }
}
