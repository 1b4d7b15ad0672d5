package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.Optional;
import lungfish.choice.CheapestBuild;
import lungfish.choice.PipeLayout;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** Pipe sizes and layouts, and the cheapest build, as a page for people. */
public final class PipesReport {
    private final Quantities quantities;
    private final PipeWords pipe;

    public PipesReport(Quantities quantities) {
        this.quantities = quantities;
        this.pipe = new PipeWords(quantities);
    }

    /** What there is to say where the room cannot be solved, or has no main. */
    public static String none() {
        return "The room has no main that can be solved, so no pipe can be compared: 'check' says what is missing.\n";
    }

    /** At most a screen. */
    public String text(PipeStudy study, CheapestBuild cheapest) {
        Page page = new Page().heading(pipe.headline(study)).paragraph(pipe.reason(study));
        page.heading("Every size of " + PipeWords.family(study) + ", "
                + PipeWords.layout(study.asDrawn().variant().layout()) + " as drawn (*)");
        page.table(sizes(study));
        if (study.layouts().size() > 1) {
            page.heading("Laid otherwise, the smallest that is good enough");
            page.table(layouts(study));
        }
        build(page, new BuildWords(cheapest, quantities));
        return page.text();
    }

    private Table table() {
        return new Table(
                words("Pipe"),
                numbers("Worst tap"),
                numbers("Best to worst"),
                numbers("Pipe takes"),
                numbers("Fastest air"),
                numbers("Price"),
                words(""));
    }

    private Table sizes(PipeStudy study) {
        Table table = table();
        study.with(study.asDrawn().variant().layout())
                .forEach(each -> row(table, PipeWords.size(each.variant()), each));
        return table;
    }

    private Table layouts(PipeStudy study) {
        Table table = table();
        for (PipeLayout layout : study.layouts()) {
            Optional<PipeResult> smallest = study.smallest(layout);
            if (!layout.equals(study.asDrawn().variant().layout())) {
                smallest.ifPresentOrElse(
                        each -> row(table, PipeWords.layout(layout) + ", " + PipeWords.size(each.variant()), each),
                        () -> table.row(PipeWords.layout(layout), "", "", "", "", "", "× none"));
            }
        }
        return table;
    }

    private void row(Table table, String name, PipeResult result) {
        table.row(
                name + (result.variant().asDrawn() ? " *" : ""),
                pipe.pressure(result.worstTapPa()),
                pipe.pressure(result.spreadPa()),
                pipe.pressure(result.pipePa()),
                quantities.show(result.metresPerS(), Dimension.SPEED),
                pipe.money(result.variant().price().total()),
                pipe.verdict(result));
    }

    private static void build(Page page, BuildWords words) {
        page.heading(words.headline());
        page.paragraph(words.reason());
        words.toKeep().ifPresent(page::paragraph);
        page.heading(words.pricesTitle());
        words.prices()
                .forEach(line -> page.item(
                        "·",
                        line.wish() + ": " + line.costs() + (line.instead().isEmpty() ? "" : ", ") + line.instead()));
        words.assumed().ifPresent(page::paragraph);
    }
}
