package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.stream.Collectors;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sizing.Candidate;

/** The blowers that were looked at for a room, and the verdict on each. */
public final class BlowersReport {
    private final Quantities quantities;
    private final Limits limits;

    public BlowersReport(Quantities quantities) {
        this.quantities = quantities;
        this.limits = new Limits(quantities);
    }

    /** The candidates as in the plan's JSON. */
    public static String json(Plan plan) {
        return JsonWriter.text(out -> out.objects("candidates", plan.candidates(), DutyJson::candidate));
    }

    /** A table for people. */
    public String text(Plan plan) {
        if (plan.candidates().isEmpty()) {
            return "The room cannot be solved, so no blower can be judged: 'check' says what is missing.\n";
        }
        Page page = new Page().heading(headline(plan));
        page.paragraph("Each tired, with devices due for cleaning; those that fit first.");
        return page.table(table(plan)).text();
    }

    private static String headline(Plan plan) {
        long fit = plan.candidates().stream().filter(Candidate::fits).count();
        return fit + " of " + plan.candidates().size() + " blower classes fit "
                + plan.room().name() + ".";
    }

    private Table table(Plan plan) {
        Table table = new Table(
                words(""),
                words("Blower"),
                numbers("Runs at"),
                numbers("Gives"),
                numbers("Reserve"),
                numbers("Draws"),
                numbers("Heard"),
                numbers("Price"),
                words("Limits that it breaks"));
        plan.candidates().forEach(candidate -> row(table, candidate));
        return table;
    }

    private void row(Table table, Candidate candidate) {
        table.row(
                candidate.fits() ? "●" : "✕",
                candidate.kind().name(),
                show(candidate.tired().gaugePa(), Dimension.PRESSURE),
                show(candidate.tired().freeM3PerS(), Dimension.AIR_FLOW),
                show(candidate.reserveShare(), Dimension.SHARE),
                show(candidate.tired().watts(), Dimension.POWER),
                show(candidate.dba(), Dimension.SOUND_LEVEL),
                show(candidate.kind().price(), Dimension.MONEY),
                candidate.broken().stream().map(limits::says).collect(Collectors.joining("; ")));
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
