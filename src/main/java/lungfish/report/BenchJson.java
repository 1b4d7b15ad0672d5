package lungfish.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.cost.Bill;
import lungfish.json.At;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.room.Wishes;

/** The blower bench as JSON, as docs/schemas/blowers.schema.json says. */
final class BenchJson {
    private final Plan plan;
    private final Optional<BlowerBench> bench;
    private final Quantities quantities;

    private BenchJson(Plan plan, Optional<BlowerBench> bench, Quantities quantities) {
        this.plan = plan;
        this.bench = bench;
        this.quantities = quantities;
    }

    /** The text; sentences in it are in the units of the reader. Where nothing can be judged there are no candidates. */
    static String text(Plan plan, Optional<BlowerBench> bench, Quantities quantities) {
        return JsonWriter.text(new BenchJson(plan, bench, quantities)::write);
    }

    private void write(JsonWriter out) {
        List<Wishes.Wish> order = Wishes.Wish.whole(plan.room().wishes().order());
        List<BenchRow> rows = bench.map(BlowerBench::rows).orElse(List.of());
        out.text("format", "lungfish-blowers").whole("version", 1);
        out.text("room", plan.room().name());
        ReasonsJson.of(plan, quantities).problems(out, plan.findings());
        Keys.object(out, "needs", bench, BenchJson::needs);
        out.texts("order", order.stream().map(At::wordOf).toList());
        Keys.text(out, "currency", plan.room().supply().currency());
        out.whole("years", BlowerBench.YEARS);
        out.objects("candidates", rows, this::row);
    }

    private static void needs(JsonWriter out, BlowerBench bench) {
        Keys.number(out, "pressure_pa", bench.needed().pressurePa());
        Keys.number(out, "free_air_m3_per_s", bench.needed().freeM3PerS());
        Keys.number(out, "wished_reserve_share", bench.asked().reserveShare());
        Keys.number(out, "loudest_dba", bench.asked().loudestDba());
        Keys.number(out, "mains_v", bench.asked().mainsV());
        Keys.text(out, "listener", bench.listener());
    }

    private void row(JsonWriter out, BenchRow row) {
        DutyJson.candidate(out, row.candidate());
        out.truth("serves", row.candidate().serves());
        out.truth("own", row.isOwn());
        Keys.number(out, "reserve_new_clean_share", row.reserveNewShare());
        Keys.number(out, "per_year", row.runs() ? OptionalDouble.of(row.perYear()) : OptionalDouble.empty());
        Keys.object(out, "cost", row.runs() ? Optional.of(row.bill()) : Optional.empty(), BenchJson::cost);
        OptionalDouble payback = row.paybackYear().isPresent() && row.runs()
                ? OptionalDouble.of(row.paybackYear().getAsInt())
                : OptionalDouble.empty();
        Keys.number(out, "payback_year", payback);
        Keys.number(out, "life_s", row.lifeS());
        out.text("reason", new BenchWords(bench.orElseThrow(), quantities).reason(row));
    }

    private static void cost(JsonWriter out, Bill bill) {
        Keys.number(out, "purchase", bill.purchase());
        Keys.number(out, "energy", bill.energy());
        Keys.number(out, "wear_parts", bill.wearParts());
        Keys.number(out, "replacements", bill.replacements());
        Keys.number(out, "total", bill.total());
    }
}
