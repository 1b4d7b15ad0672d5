package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.Optional;
import java.util.stream.Collectors;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sizing.Candidate;

/** The blowers that were looked at for a room, and the verdict on each. */
public final class BlowersReport {
    /** Stands for what a class that cannot give the air would do: it never meets the demand. */
    private static final String TOO_SMALL = "—";

    private static final String UNKNOWN = "—";

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
        page.table(table(plan));
        otherMains(plan).ifPresent(page::paragraph);
        return page.text();
    }

    private static String headline(Plan plan) {
        long fit = plan.candidates().stream().filter(Candidate::fits).count();
        long listed = plan.candidates().stream().filter(Candidate::suitsMains).count();
        return fit + " of " + listed + " blower classes fit " + plan.room().name() + ".";
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
        plan.candidates().stream().filter(Candidate::suitsMains).forEach(candidate -> row(table, candidate));
        return table;
    }

    /** Nobody buys a machine for other mains: they are counted, not listed. */
    private Optional<String> otherMains(Plan plan) {
        long others = plan.candidates().stream()
                .filter(candidate -> !candidate.suitsMains())
                .count();
        return plan.room().supply().voltageV().stream()
                .filter(volts -> others > 0)
                .mapToObj(volts -> "Left out: " + others + (others == 1 ? " class" : " classes")
                        + " made for other mains than the room's " + show(volts, Dimension.VOLTAGE) + ".")
                .findFirst();
    }

    private void row(Table table, Candidate candidate) {
        boolean runs = candidate.reserveShare() >= 0;
        table.row(
                candidate.fits() ? "●" : "✕",
                candidate.kind().name(),
                runs ? show(candidate.tired().gaugePa(), Dimension.PRESSURE) : TOO_SMALL,
                runs ? show(candidate.tired().freeM3PerS(), Dimension.AIR_FLOW) : TOO_SMALL,
                show(candidate.reserveShare(), Dimension.SHARE),
                runs ? show(candidate.tired().watts(), Dimension.POWER) : TOO_SMALL,
                candidate.dba().isPresent() ? show(candidate.dba().getAsDouble(), Dimension.SOUND_LEVEL) : UNKNOWN,
                show(candidate.kind().price(), Dimension.MONEY),
                candidate.broken().stream().map(limits::says).collect(Collectors.joining("; ")));
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
