package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.standing.StandingAnswer;

/** How the ways to give air stand up to failures, as a section of a page for people. */
public final class StandingReport {
    private final Quantities quantities;

    public StandingReport(Quantities quantities) {
        this.quantities = quantities;
    }

    /** Adds the section to a page. */
    public void on(Page page, StandingAnswer answer) {
        StandingWords words = new StandingWords(answer, quantities);
        page.heading("Redundancy").paragraph(words.headline());
        page.table(hours(answer, words));
        page.paragraph("").table(losses(answer, words));
        page.heading("What takes several at once");
        words.common().forEach(each -> page.item("·", each));
        page.paragraph("").paragraph(words.taken()).paragraph(StandingWords.CAUTION);
    }

    private Table hours(StandingAnswer answer, StandingWords words) {
        Table table = new Table(
                words("Time a year, for a tank"),
                numbers("Without air"),
                numbers("by machines"),
                numbers("by the mains"),
                numbers("Not all its air"),
                words(""));
        answer.ways()
                .forEach(each -> table.row(
                        StandingWords.name(each),
                        words.time(each.allAirlessSPerYear()),
                        words.time(each.airlessSPerYear()),
                        words.time(each.mainsSPerYear()),
                        words.time(each.allShortSPerYear()),
                        StandingWords.state(each).orElse("")));
        return table;
    }

    private Table losses(StandingAnswer answer, StandingWords words) {
        Table table = new Table(
                words("One machine that fails"),
                numbers("Machines"),
                numbers("One fails every"),
                numbers("Quiet years"),
                words("Takes the air of"));
        answer.ways()
                .forEach(each -> table.row(
                        StandingWords.name(each),
                        Integer.toString(each.machines()),
                        words.every(each),
                        quantities.show(each.quietYear(), Dimension.SHARE),
                        words.loss(each)));
        return table;
    }
}
