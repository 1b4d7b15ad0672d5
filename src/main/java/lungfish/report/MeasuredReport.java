package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import lungfish.measured.MeasuredRoom;
import lungfish.measured.Suspect;
import lungfish.quantity.Quantities;

/** A measured room as a page of text. */
public final class MeasuredReport {
    private final MeasuredWords words;
    private final Page page = new Page();

    public MeasuredReport(Quantities quantities, Names names) {
        this.words = new MeasuredWords(quantities, names);
    }

    /** A page for people. */
    public String text(MeasuredRoom measured) {
        page.heading(words.headline(measured) + ".").paragraph(words.sure(measured));
        words.doubtful(measured).ifPresent(page::paragraph);
        page.paragraph("").table(suspects(measured));
        words.places(measured).forEach(place -> page.item("-", place));
        page.heading("What the readings say of the room");
        words.corrections(measured).forEach(each -> page.item("-", each));
        words.unused(measured).ifPresent(page::paragraph);
        words.next(measured).ifPresent(next -> page.heading("Read next").paragraph(next));
        return page.text();
    }

    private Table suspects(MeasuredRoom measured) {
        Table table = new Table(words("What may have happened"), numbers("In 100"));
        for (Suspect suspect : MeasuredWords.worth(measured)) {
            table.row(words.culprit(suspect.culprit()), MeasuredWords.odds(suspect.probability()));
        }
        return table;
    }
}
