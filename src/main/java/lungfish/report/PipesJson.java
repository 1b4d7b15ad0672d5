package lungfish.report;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.PipeSize;
import lungfish.choice.Build;
import lungfish.choice.CheapestBuild;
import lungfish.choice.PipeLayout;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;
import lungfish.choice.PipeVariant;
import lungfish.choice.WishPrice;
import lungfish.json.JsonWriter;
import lungfish.plan.PipePrice;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** Pipe sizes and layouts, and the cheapest build, as JSON: docs/schemas/pipes.schema.json says what it holds. */
public final class PipesJson {
    private PipesJson() {}

    /** Of a room whose pipe cannot be compared; the sentences are in the units of the reader. */
    public static String none(Plan plan, Quantities quantities) {
        return JsonWriter.text(out -> {
            beginning(out, plan, quantities);
            out.nothing("blower_class").nothing("pipe_matters");
            out.objects("variants", List.of(), (inner, none) -> {});
            out.objects("smallest_good_enough", List.of(), (inner, none) -> {});
            out.nothing("cheapest");
        });
    }

    /** The text; the sentences are in the units of the reader. */
    public static String text(Plan plan, Quantities quantities, PipeStudy study, CheapestBuild cheapest) {
        return JsonWriter.text(out -> {
            beginning(out, plan, quantities);
            out.text("blower_class", study.asDrawn().duty().candidate().kind().id());
            out.truth("pipe_matters", study.pipeMatters());
            out.objects("variants", study.results(), PipesJson::result);
            out.flatObjects(
                    "smallest_good_enough",
                    study.layouts().stream().toList(),
                    (inner, layout) -> smallest(inner, study, layout));
            out.object("cheapest", inner -> cheapest(inner, cheapest));
        });
    }

    private static void beginning(JsonWriter out, Plan plan, Quantities quantities) {
        out.text("format", "lungfish-pipes").whole("version", 1);
        out.text("room", plan.room().name());
        ReasonsJson.of(plan, quantities).problems(out, plan.findings());
    }

    private static void layout(JsonWriter out, PipeLayout layout) {
        out.word("main", layout.main()).whole("feeds", layout.feeds());
    }

    private static void variant(JsonWriter out, PipeVariant variant) {
        layout(out, variant.layout());
        Keys.text(out, "size", variant.size().map(PipeSize::id));
        out.truth("as_drawn", variant.asDrawn());
    }

    private static void smallest(JsonWriter out, PipeStudy study, PipeLayout layout) {
        layout(out, layout);
        Optional<PipeSize> size =
                study.smallest(layout).flatMap(each -> each.variant().size());
        Keys.text(out, "size", size.map(PipeSize::id));
    }

    private static void result(JsonWriter out, PipeResult result) {
        variant(out, result.variant());
        PipePrice price = result.variant().price();
        Keys.number(out, "price_of_pipe", price.pipe());
        Keys.number(out, "price_of_fittings", price.fittings());
        Keys.number(out, "price_of_taps", price.taps());
        Keys.number(out, "needed_pressure_pa", result.neededPa());
        out.text("index_outlet", result.duty().needed().index().id().text());
        Keys.number(out, "pipe_loss_pa", result.pipePa());
        Keys.number(out, "worst_tap_pa", result.worstTapPa());
        Keys.number(out, "best_to_worst_pa", result.spreadPa());
        Keys.number(out, "fastest_air_m_per_s", result.metresPerS());
        out.truth("matters", result.matters()).truth("good_enough", result.good());
        out.flatObjects("breaks", result.missed(), DutyJson::broken);
    }

    private static void cheapest(JsonWriter out, CheapestBuild cheapest) {
        out.whole("builds_compared", cheapest.builds());
        out.object("as_drawn", inner -> build(inner, cheapest.drawn()));
        Keys.object(out, "best", cheapest.best(), PipesJson::build);
        Keys.object(out, "cheapest_over_years", cheapest.lasting(), PipesJson::build);
        Keys.object(out, "nearest", cheapest.nearest(), PipesJson::build);
        out.objects("wishes", cheapest.prices(), (inner, price) -> price(inner, cheapest, price));
    }

    private static void price(JsonWriter out, CheapestBuild cheapest, WishPrice price) {
        out.word("limit", price.limit())
                .truth("is_wish", price.limit().isWish())
                .truth("is_assumed", cheapest.assumed().contains(price.limit()));
        Keys.number(out, "costs", price.costs());
        Keys.object(out, "without", price.build(), PipesJson::build);
    }

    private static void build(JsonWriter out, Build build) {
        variant(out, build.pipe().variant());
        out.text("blower", build.candidate().fleet().name())
                .text("class", build.candidate().kind().id());
        Keys.number(out, "purchase", build.purchase());
        Keys.number(out, "total", build.total());
        out.whole("years", build.years());
        Keys.number(out, "needed_pressure_pa", build.pipe().neededPa());
        Keys.number(out, "running_pressure_pa", build.candidate().tired().gaugePa());
        Keys.number(out, "power_w", build.candidate().tired().watts());
        Keys.number(out, "reserve_share", build.candidate().reserveShare());
        Keys.number(out, "noise_dba", build.candidate().dba());
        out.flatObjects("breaks", build.missed(), DutyJson::broken);
    }
}
