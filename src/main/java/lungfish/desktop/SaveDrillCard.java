package lungfish.desktop;

import lungfish.desk.Desk;
import lungfish.desk.TextFiles;
import lungfish.desk.Trouble;
import lungfish.print.PdfFile;

/** Writes the drill card of the room as a PDF. */
final class SaveDrillCard extends Act {
    private static final String ENDING = "-drill-card.pdf";

    private final transient WindowPane window;

    SaveDrillCard(WindowPane window) {
        super("Save the drill card as PDF…", 'V', null);
        this.window = window;
    }

    @Override
    void act() {
        CardOfRoom card = CardOfRoom.of(window.view());
        Desk desk = window.view().desk();
        window.files().asking().toSavePdf(window.files().named(ENDING)).ifPresent(file -> new TextFiles(desk)
                .write(
                        file,
                        () -> PdfFile.bytes(card.printout()),
                        trouble -> trouble.ifPresent(
                                problem -> desk.tell(Trouble.of("The drill card is not saved", problem)))));
    }
}
