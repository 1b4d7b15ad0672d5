package lungfish.report;

import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.reason.Why;

/** Writes why a figure is what it is: the terms that add up to it, what went in, the equation and its source. */
public final class WhySheet {
    private final Quantities quantities;
    private final Sentences sentences;

    public WhySheet(Quantities quantities, Sentences sentences) {
        this.quantities = quantities;
        this.sentences = sentences;
    }

    /** Adds one sheet to a page. */
    public void write(Why why, Page page) {
        page.heading("Why " + quantities.show(why.totalSi(), why.dimension()) + "? " + Sentences.capital(why.figure()));
        page.table(terms(why));
        if (!why.inputs().isEmpty()) {
            page.table(inputs(why));
        }
        page.item("Equation:", why.equation());
        page.item("Source:", why.source());
    }

    private Table terms(Why why) {
        String heading = why.adding() == Why.Adding.SUM ? "Adds up from" : "Adds up by energy from";
        Table table = new Table(Table.Column.words(heading), Table.Column.numbers(""), Table.Column.words(""));
        for (int i = 0; i < why.terms().size(); i++) {
            Why.Term term = why.terms().get(i);
            table.row(sentences.says(term), show(term.si(), why.termDimension(i)), Sentences.says(term.origin()));
        }
        return table.row("together", show(why.sumSi(), why.dimension()), "");
    }

    private Table inputs(Why why) {
        Table table = new Table(Table.Column.words("Went in"), Table.Column.numbers(""), Table.Column.words(""));
        for (Why.Input input : why.inputs()) {
            table.row(input.name(), show(input.si(), input.dimension()), Sentences.says(input.origin()));
        }
        return table;
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
