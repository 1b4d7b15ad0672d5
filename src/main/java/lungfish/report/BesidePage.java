package lungfish.report;

import java.util.List;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.today.Beside;

/** The small pumps beside the central blower, on a page; nothing where no pump of today is known. */
final class BesidePage {
    private final Plan plan;
    private final Beside beside;
    private final Quantities quantities;

    BesidePage(Plan plan, Beside beside, Quantities quantities) {
        this.plan = plan;
        this.beside = beside;
        this.quantities = quantities;
    }

    void write(Page page) {
        if (beside.today().isEmpty()) {
            return;
        }
        BesideWords words = new BesideWords(plan, beside, quantities);
        page.heading("A central blower instead of the small pumps?");
        page.paragraph(words.sentence());
        reasons(page, "For it:     ", words.reasons(true));
        reasons(page, "Against it: ", words.reasons(false));
        if (beside.planned().isPresent()) {
            page.paragraph("").table(table());
        }
    }

    private static void reasons(Page page, String label, List<String> reasons) {
        if (!reasons.isEmpty()) {
            page.hung(label, String.join("; ", reasons) + ".");
        }
    }

    private Table table() {
        Table table = new Table(
                Table.Column.words(""), Table.Column.numbers("Small pumps"), Table.Column.numbers("Central blower"));
        new BesideRows(plan, beside, quantities)
                .all()
                .forEach(row -> table.row(row.name(), row.today(), row.planned()));
        return table;
    }
}
