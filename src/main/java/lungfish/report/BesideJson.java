package lungfish.report;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lungfish.cost.Bill;
import lungfish.json.JsonWriter;
import lungfish.today.Beside;
import lungfish.today.Failure;
import lungfish.today.Reason;
import lungfish.today.Way;

/** The small pumps beside the central blower, as JSON. */
final class BesideJson {
    private final Beside beside;

    BesideJson(Beside beside) {
        this.beside = beside;
    }

    void write(JsonWriter out) {
        out.word("verdict", beside.verdict());
        Keys.number(out, "payback_year", number(beside.paybackYear()));
        Keys.number(out, "pays_from_outlets", number(beside.paysFrom()));
        out.flatObjects("reasons", beside.reasons(), BesideJson::reason);
        Keys.object(out, "small_pumps", beside.today(), this::way);
        Keys.object(out, "central_blower", beside.planned(), this::way);
    }

    private static void reason(JsonWriter out, Reason reason) {
        out.word("reason", reason.kind()).truth("speaks_for_it", reason.kind().speaksFor());
        Keys.number(out, "by_si", reason.by());
        Keys.number(out, "of_si", reason.of());
    }

    private void way(JsonWriter out, Way way) {
        out.whole("machines", way.machines());
        Keys.number(out, "circuits", number(way.circuits()));
        Keys.number(out, "power_w", way.watts());
        Keys.number(out, "noise_dba", way.dba());
        Keys.number(out, "asked_m3_per_s", way.air().askedM3PerS());
        Keys.number(out, "gives_m3_per_s", way.air().givesM3PerS());
        Keys.number(out, "missing_m3_per_s", way.air().missingM3PerS());
        out.whole("short_outlets", way.air().shortOutlets());
        out.whole("unfed_outlets", way.air().unfed());
        OptionalDouble events = way.bill()
                .map(bill -> OptionalDouble.of(bill.events().perYear(beside.years())))
                .orElse(OptionalDouble.empty());
        Keys.number(out, "rebuilds_and_replacements_per_year", events);
        List<Double> byYear = way.bill().map(Bill::byYear).orElse(List.of());
        List<Integer> years = IntStream.range(0, byYear.size()).boxed().toList();
        out.flatObjects("by_year", years, (inner, i) -> {
            inner.whole("year", i + 1);
            Keys.number(inner, "spent", byYear.get(i));
        });
        Keys.object(out, "worst_failure", way.failure(), BesideJson::failure);
    }

    private static void failure(JsonWriter out, Failure failure) {
        out.text("machine", failure.machine()).whole("outlets", failure.outlets());
        out.whole("tanks", failure.tanks());
        Keys.number(out, "left_share", failure.leftShare());
        out.truth("standby", failure.standby());
    }

    private static OptionalDouble number(OptionalInt whole) {
        return whole.isPresent() ? OptionalDouble.of(whole.getAsInt()) : OptionalDouble.empty();
    }
}
