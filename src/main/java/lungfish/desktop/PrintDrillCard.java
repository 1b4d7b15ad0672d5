package lungfish.desktop;

import java.awt.event.KeyEvent;

/** Prints the drill card of the room, after the printer's own questions. */
final class PrintDrillCard extends Act {
    private final transient WindowPane window;

    PrintDrillCard(WindowPane window) {
        super("Print the drill card…", 'P', menuKey(KeyEvent.VK_P));
        this.window = window;
    }

    @Override
    void act() {
        new Printer(window, "The drill card").print(CardOfRoom.of(window.view())::printout);
    }
}
