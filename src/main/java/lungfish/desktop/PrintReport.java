package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Prints the build sheet of the room, after the printer's own questions. */
final class PrintReport extends Act {
    private final transient WindowPane window;

    PrintReport(WindowPane window) {
        super("Print the build sheet…", 'B', shiftMenuKey(KeyEvent.VK_P));
        this.window = window;
    }

    @Override
    void act() {
        new Printer(window, "The build sheet").print(ReportOfRoom.of(window.view())::printout);
    }
}
