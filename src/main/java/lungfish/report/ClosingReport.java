package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import lungfish.closing.Closing;
import lungfish.closing.Held;
import lungfish.closing.Moved;
import lungfish.json.JsonWriter;
import lungfish.network.DropFlow;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What closing some outlets does, as text and as docs/schemas/closing.schema.json says. */
public final class ClosingReport {
    private final Plan plan;
    private final Closing closing;
    private final Quantities quantities;
    private final Names names;

    public ClosingReport(Plan plan, Closing closing, Quantities quantities) {
        this.plan = plan;
        this.closing = closing;
        this.quantities = quantities;
        this.names = new Names(plan.room());
    }

    /** For people: the word, what the blower does, the bleed, and the others, the most changed first. */
    public String text() {
        ClosingWords words = new ClosingWords(closing, quantities, names);
        Page page = new Page().heading(plan.room().name());
        page.paragraph(words.headline() + ". " + words.because());
        page.paragraph(words.pressure());
        words.instead().ifPresent(page::paragraph);
        if (!closing.others().isEmpty()) {
            page.heading("The others").table(table(words));
            page.item("", "● served, ▲ starved, ■ greedy, ✕ closed.");
        }
        return page.text();
    }

    private Table table(ClosingWords words) {
        Table table = new Table(
                words(""),
                words("Outlet"),
                words("Tank"),
                numbers("Target"),
                numbers("Before"),
                numbers("After"),
                numbers("Change"));
        for (Moved moved : closing.others()) {
            table.row(
                    OutletTable.mark(moved.after()),
                    moved.need().id().text(),
                    moved.need().seat().tank().name(),
                    flow(moved.need().targetM3PerS().si()),
                    flow(moved.before().freeM3PerS()),
                    flow(moved.after().freeM3PerS()),
                    words.change(moved));
        }
        return table;
    }

    private String flow(double m3PerS) {
        return quantities.show(m3PerS, Dimension.AIR_FLOW);
    }

    /** For programs. */
    public String json() {
        return JsonWriter.text(this::write);
    }

    private void write(JsonWriter out) {
        out.text("format", "lungfish-closing").whole("version", 1);
        out.text("room", plan.room().name());
        new ReasonsJson(names, new Sentences(quantities, names)).problems(out, plan.findings());
        out.texts("shut", closing.shut().stream().map(need -> need.id().text()).toList());
        out.truth("retune", closing.isRetuned());
        Keys.number(out, "most_change_share", closing.most());
        out.whole("become_greedy", closing.becoming(DropFlow.State.GREEDY));
        out.whole("become_starved", closing.becoming(DropFlow.State.STARVED));
        Keys.number(out, "pressure_before_pa", closing.gaugeBeforePa());
        Keys.number(out, "pressure_after_pa", closing.gaugeAfterPa());
        Keys.number(out, "bled_before_m3_per_s", closing.bledBeforeM3PerS());
        Keys.number(out, "bled_after_m3_per_s", closing.bledAfterM3PerS());
        out.object("hardest_tired", inner -> held(inner, closing.tired()));
        out.object("hardest_new", inner -> held(inner, closing.fresh()));
        out.object("bleed_instead", this::bleed);
        out.flatObjects("others", closing.others(), ClosingReport::moved);
    }

    private static void held(JsonWriter out, Held held) {
        out.text("machine", held.machine());
        Keys.number(out, "before_pa", held.beforePa());
        Keys.number(out, "after_pa", held.afterPa());
        Keys.number(out, "continuous_pressure_pa", held.continuousPa());
        out.truth("too_high", held.isTooHigh());
    }

    private void bleed(JsonWriter out) {
        Keys.number(out, "bled_m3_per_s", closing.bleed().bledM3PerS());
        Keys.number(out, "more_m3_per_s", closing.bleed().moreM3PerS());
        Keys.number(out, "most_change_share", closing.bleed().restShare());
    }

    private static void moved(JsonWriter out, Moved moved) {
        out.text("id", moved.need().id().text());
        Keys.number(out, "before_m3_per_s", moved.before().freeM3PerS());
        Keys.number(out, "after_m3_per_s", moved.after().freeM3PerS());
        Keys.number(out, "change_share", moved.share());
        out.word("state_before", moved.before().state())
                .word("state_after", moved.after().state());
    }
}
