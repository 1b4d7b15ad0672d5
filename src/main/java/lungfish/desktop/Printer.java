package lungfish.desktop;

import java.awt.print.PrinterException;
import java.util.function.Supplier;
import lungfish.desk.Hands;
import lungfish.desk.Trouble;
import lungfish.json.Problem;
import lungfish.print.PaperTray;
import lungfish.print.Printout;

/**
 * Prints pages: made away from the front, printed after the printer's own questions.
 *
 * @param what is printed, as it begins a sentence
 */
record Printer(WindowPane window, String what) {
    void print(Supplier<Printout> making) {
        Hands hands = window.view().desk().shared().hands();
        hands.ahead().execute(() -> {
            Printout printout = making.get();
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
                            what + " is not printed",
                            new Problem("printer", String.valueOf(e.getMessage()), "one that is on and has paper"))));
        }
    }
}
