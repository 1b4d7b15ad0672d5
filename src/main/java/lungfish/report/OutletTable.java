package lungfish.report;

import static lungfish.report.Table.Column.numbers;
import static lungfish.report.Table.Column.words;

import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.network.DropFlow;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.sizing.Setting;

/** The outlets of a plan as a table: what each should get, gets, and how its valve is set. */
final class OutletTable {
    private final Plan plan;
    private final Quantities quantities;

    OutletTable(Plan plan, Quantities quantities) {
        this.plan = plan;
        this.quantities = quantities;
    }

    void write(Page page) {
        if (plan.outlets().isEmpty()) {
            return;
        }
        page.heading("Outlets").table(table());
        if (plan.duty().isPresent()) {
            page.paragraph("");
            page.item(
                    "",
                    "Gets: every valve at the coarse start printed. As set: every valve as filed. Spare: what the"
                            + " valve burns at the tap. Jar: seconds to fill an inverted jar" + jar()
                            + " with the target.");
            page.item("", "As set: ● served, ▲ starved, ■ greedy, ✕ closed; ◉ the worst-served outlet.");
        }
    }

    private String jar() {
        OptionalDouble typed = plan.room().wishes().jarM3();
        return typed.isPresent() ? " of " + show(typed, Dimension.VOLUME) : "";
    }

    private Table table() {
        Table table = new Table(
                words(""),
                words("Outlet"),
                words("Tank"),
                words("Device"),
                numbers("Depth"),
                numbers("Target"),
                numbers("Gets"),
                numbers("As set"),
                numbers("Spare"),
                numbers("Valve"),
                numbers("Jar"));
        plan.outlets().forEach(outlet -> row(table, outlet));
        return table;
    }

    private void row(Table table, OutletPlan outlet) {
        Need need = outlet.need();
        table.row(
                (outlet.index() ? "◉" : "")
                        + outlet.asSet().map(OutletTable::mark).orElse(""),
                need.id().text(),
                need.seat().tank().name(),
                need.device().name(),
                quantities.show(need.depthM().si(), Dimension.DEPTH),
                quantities.show(need.targetM3PerS().si(), Dimension.AIR_FLOW),
                show(outlet.predictedM3PerS(), Dimension.AIR_FLOW),
                outlet.asSet()
                        .map(flow -> quantities.show(flow.freeM3PerS(), Dimension.AIR_FLOW))
                        .orElse(""),
                outlet.setting().map(this::spare).orElse(""),
                outlet.setting()
                        .map(setting -> quantities.show(setting.opening(), Dimension.SHARE))
                        .orElse(""),
                quantities.show(outlet.jarS(), Dimension.DURATION));
    }

    private String spare(Setting setting) {
        return quantities.show(setting.sparePa(), Dimension.PRESSURE);
    }

    private String show(OptionalDouble si, Dimension dimension) {
        return si.isPresent() ? quantities.show(si.getAsDouble(), dimension) : "";
    }

    static String mark(DropFlow flow) {
        return switch (flow.state()) {
            case SERVED -> "●";
            case STARVED -> "▲";
            case GREEDY -> "■";
            case CLOSED -> "✕";
        };
    }
}
