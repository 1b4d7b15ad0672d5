package lungfish.desktop;

import java.awt.event.KeyEvent;
import java.awt.print.PrinterException;
import lungfish.desk.Hands;
import lungfish.desk.Trouble;
import lungfish.json.Problem;
import lungfish.print.PaperTray;
import lungfish.print.Printout;

/** Prints the drill card of the room, after the printer's own questions. */
final class PrintDrillCard extends Act {
    private final transient WindowPane window;

    PrintDrillCard(WindowPane window) {
        super("Print the drill card…", 'P', menuKey(KeyEvent.VK_P));
        this.window = window;
    }

    @Override
    void act() {
        CardOfRoom card = CardOfRoom.of(window.view());
        Hands hands = window.view().desk().shared().hands();
        hands.ahead().execute(() -> {
            Printout printout = card.printout();
            hands.front().execute(() -> ask(printout, hands));
        });
    }

    private void ask(Printout printout, Hands hands) {
        window.files()
                .asking()
                .toPrint(new PaperTray(printout), printout.title())
                .ifPresent(printing -> hands.disk().execute(() -> print(printing, hands)));
    }

    private void print(Asking.Printing printing, Hands hands) {
        try {
            printing.print();
        } catch (PrinterException e) {
            hands.front().execute(() -> window.view()
                    .desk()
                    .tell(Trouble.of(
                            "The drill card is not printed",
                            new Problem("printer", String.valueOf(e.getMessage()), "one that is on and has paper"))));
        }
    }
}
