package lungfish.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.cost.Bill;
import lungfish.plan.Plan;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;
import lungfish.today.Beside;
import lungfish.today.Failure;
import lungfish.today.Way;

/** The figures of today's pumps and of the planned blower, line by line. */
public final class BesideRows {
    /** What is not known. */
    public static final String UNKNOWN = "not known";

    /** One figure of both. */
    public record Row(String name, String today, String planned) {}

    private final Plan plan;
    private final Beside beside;
    private final Quantities quantities;

    public BesideRows(Plan plan, Beside beside, Quantities quantities) {
        this.plan = plan;
        this.beside = beside;
        this.quantities = quantities;
    }

    /** All lines, those that decide first; none that is known of neither. */
    public List<Row> all() {
        double asked = plan.demand().totalM3PerS();
        List<Row> rows = new ArrayList<>();
        rows.add(row("Air at depth, of " + flow(asked) + " asked", way -> air(way.air())));
        rows.add(row("Outlets short of air", way -> shortOutlets(way.air())));
        rows.add(row(
                "Level at "
                        + (plan.planned().at().isEmpty()
                                ? "the listener"
                                : plan.planned().at()),
                this::level));
        rows.add(row("Machines, each with its plug", way -> show(way.machines(), Dimension.COUNT)));
        rows.add(row("Circuits that they hang on", BesideRows::circuits));
        rows.add(row("Power", way -> show(way.watts(), Dimension.POWER)));
        rows.add(row("Rebuilt or replaced", this::events));
        rows.add(row("To buy", way -> bill(way, Bill::purchase)));
        rows.add(row("Power, a year", way -> bill(way, Bill::energyPerYear)));
        rows.add(row("All costs over " + beside.years() + " years", way -> bill(way, Bill::total)));
        rows.add(row("When one fails", way -> way.failure().map(this::failure).orElse(UNKNOWN)));
        rows.removeIf(row -> row.today().equals(UNKNOWN) && row.planned().equals(UNKNOWN));
        return rows;
    }

    private Row row(String name, Function<Way, String> figure) {
        return new Row(name, told(beside.today(), figure), told(beside.planned(), figure));
    }

    private static String told(Optional<Way> way, Function<Way, String> figure) {
        return way.map(figure).orElse(UNKNOWN);
    }

    private String air(Way.Air air) {
        return air.givesM3PerS() > 0 ? flow(air.givesM3PerS()) : UNKNOWN;
    }

    private String shortOutlets(Way.Air air) {
        if (air.givesM3PerS() <= 0) {
            return UNKNOWN;
        }
        String lacking = air.shortOutlets() + ", by " + flow(air.missingM3PerS());
        String unfed = air.unfed() + " without a pump";
        if (air.shortOutlets() > 0) {
            return air.unfed() > 0 ? lacking + ", " + unfed : lacking;
        }
        return air.unfed() > 0 ? unfed : "none";
    }

    private String level(Way way) {
        OptionalDouble dba = way.dba();
        return dba.isPresent() ? show(dba.getAsDouble(), Dimension.SOUND_LEVEL) : UNKNOWN;
    }

    private static String circuits(Way way) {
        return way.circuits().isPresent() ? Integer.toString(way.circuits().getAsInt()) : "not said";
    }

    private String events(Way way) {
        return way.bill()
                .map(bill -> times(bill.events().perYear(beside.years()), quantities) + " times a year")
                .orElse(UNKNOWN);
    }

    private String bill(Way way, Function<Bill, Double> figure) {
        return way.bill().map(bill -> show(figure.apply(bill), Dimension.MONEY)).orElse(UNKNOWN);
    }

    private String failure(Failure failure) {
        if (failure.leftShare() >= 1) {
            return "the others give enough";
        }
        String hit = failure.leftShare() <= 0
                ? "stops " + Sentences.counted(failure.outlets(), "outlet") + ", "
                        + Sentences.counted(failure.tanks(), "tank")
                : "leaves " + Sentences.counted(failure.outlets(), "outlet") + " "
                        + show(failure.leftShare(), Dimension.SHARE) + " of their air";
        return failure.standby() ? hit + ", until the standby runs" : hit;
    }

    /** How often, without zeros that say nothing. */
    static String times(double often, Quantities quantities) {
        String shown = quantities.show(often, Dimension.RATIO);
        return shown.contains(".") ? shown.replaceFirst("\\.?0+$", "") : shown;
    }

    private String flow(double m3PerS) {
        return show(m3PerS, Dimension.AIR_FLOW);
    }

    private String show(double si, Dimension dimension) {
        return quantities.show(si, dimension);
    }
}
