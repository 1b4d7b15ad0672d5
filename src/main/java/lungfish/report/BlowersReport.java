package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.Optional;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.drawing.BenchRowPicture;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sizing.Candidate;

/** The blowers that were looked at for a room, and the verdict on each. */
public final class BlowersReport {
    private final Plan plan;
    private final Optional<BlowerBench> bench;
    private final Quantities quantities;

    /**
     * The report.
     *
     * @param bench empty where the room cannot be solved
     */
    public BlowersReport(Plan plan, Optional<BlowerBench> bench, Quantities quantities) {
        this.plan = plan;
        this.bench = bench;
        this.quantities = quantities;
    }

    /** As docs/schemas/blowers.schema.json says. */
    public String json() {
        return BenchJson.text(plan, bench, quantities);
    }

    /** A table for people. */
    public String text() {
        return bench.map(this::text)
                .orElse("The room cannot be solved, so no blower can be judged: 'check' says what is missing.\n");
    }

    private String text(BlowerBench bench) {
        Page page = new Page().heading(headline(bench));
        BesideWords.notYet(plan).ifPresent(page::paragraph);
        page.paragraph("Wished for, what matters most first: " + BenchWords.order(bench.order()) + ". Needed: "
                + show(bench.needed().freeM3PerS(), Dimension.AIR_FLOW) + " at "
                + show(bench.needed().pressurePa(), Dimension.PRESSURE) + ", devices due for cleaning.");
        page.table(table(bench));
        page.paragraph(
                "Runs, gives, draws and keeps in reserve: tired, with devices due for cleaning. New: with clean ones."
                        + " Costs " + BlowerBench.YEARS
                        + " years: purchase, energy, rebuilds and replacements, without the pipe.");
        otherMains(bench).ifPresent(page::paragraph);
        return page.text();
    }

    private String headline(BlowerBench bench) {
        return bench.fitting() + " of " + bench.ofThisMains() + " blower classes fit "
                + plan.room().name() + ".";
    }

    private Table table(BlowerBench bench) {
        Table table = new Table(
                words(""),
                words("Blower"),
                numbers("Runs at"),
                numbers("Gives"),
                numbers("Reserve"),
                numbers("New"),
                numbers("Draws"),
                numbers("Heard"),
                numbers("To buy"),
                numbers(BlowerBench.YEARS + " years"),
                numbers("Lives"),
                words("Why it stands here"));
        BenchWords words = new BenchWords(bench, quantities);
        bench.rows().stream()
                .filter(row -> row.candidate().suitsMains())
                .forEach(row -> row(table, row, words.reason(row)));
        return table;
    }

    /** Nobody buys a machine for other mains: they are counted, not listed. */
    private Optional<String> otherMains(BlowerBench bench) {
        long others = bench.rows().size() - bench.ofThisMains();
        return plan.room().supply().voltageV().stream()
                .filter(volts -> others > 0)
                .mapToObj(volts -> "Left out: " + others + (others == 1 ? " class" : " classes")
                        + " made for other mains than the room's " + show(volts, Dimension.VOLTAGE) + ".")
                .findFirst();
    }

    private void row(Table table, BenchRow row, String reason) {
        Candidate candidate = row.candidate();
        table.row(
                BenchRowPicture.mark(candidate),
                candidate.kind().name() + (row.isOwn() ? " (own)" : ""),
                BenchFigure.RUNS_AT.show(row, quantities),
                BenchFigure.GIVES.show(row, quantities),
                BenchFigure.RESERVE_TIRED.show(row, quantities),
                BenchFigure.RESERVE_NEW.show(row, quantities),
                BenchFigure.POWER.show(row, quantities),
                BenchFigure.LEVEL.show(row, quantities),
                BenchFigure.TO_BUY.show(row, quantities),
                BenchFigure.TOTAL.show(row, quantities),
                BenchFigure.LIFE.show(row, quantities),
                reason);
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
