package lungfish.report;

import java.util.List;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.room.Spread;
import lungfish.sure.Band;
import lungfish.sure.Odds;
import lungfish.sure.Sureness;
import lungfish.sure.Weight;

/** How sure a plan is as JSON, as docs/schemas/sure.schema.json says: SI units, named in the keys. */
public final class SureJson {
    private SureJson() {}

    /**
     * The whole answer.
     *
     * @param quantities the units of the sentences in it
     * @param seed that gives it again
     */
    public static String text(Plan plan, Quantities quantities, long seed, Sureness sure) {
        return JsonWriter.text(out -> {
            head(out, plan, quantities, seed);
            out.whole("samples", sure.samples());
            out.text("blower", sure.chosen().fleet().name())
                    .text("class", sure.chosen().kind().id());
            out.object("bands", inner -> bands(inner, sure.bands()));
            out.objects("stages", sure.stages(), SureJson::stage);
            out.objects("candidates", sure.candidates(), SureJson::candidate);
            out.objects("weights", sure.weights(), SureJson::weight);
        });
    }

    /** Of a room that cannot be solved. */
    public static String unsolved(Plan plan, Quantities quantities, long seed) {
        return JsonWriter.text(out -> {
            head(out, plan, quantities, seed);
            out.whole("samples", 0).nothing("blower").nothing("class").nothing("bands");
            for (String key : List.of("stages", "candidates", "weights")) {
                out.objects(key, List.of(), (inner, none) -> {});
            }
        });
    }

    private static void head(JsonWriter out, Plan plan, Quantities quantities, long seed) {
        out.text("format", "lungfish-sure").whole("version", 1);
        out.text("room", plan.room().name());
        ReasonsJson.of(plan, quantities).problems(out, plan.findings());
        out.whole("seed", seed);
    }

    private static void bands(JsonWriter out, Sureness.Bands bands) {
        band(out, "headroom_outlets", bands.headroom());
        band(out, "reserve_share", bands.reserve());
        band(out, "needed_pressure_pa", bands.needed());
        band(out, "running_pressure_pa", bands.running());
        band(out, "running_free_air_m3_per_s", bands.gives());
        band(out, "power_w", bands.draws());
    }

    private static void band(JsonWriter out, String key, Band band) {
        out.object(key, inner -> {
            Keys.number(inner, "planned", band.plannedSi());
            Keys.number(inner, "low", band.lowSi());
            Keys.number(inner, "median", band.medianSi());
            Keys.number(inner, "high", band.highSi());
        });
    }

    private static void stage(JsonWriter out, Sureness.StageOdds stage) {
        out.whole("step", stage.when().number());
        Keys.text(out, "name", stage.when().name());
        out.whole("outlets", stage.outlets());
        odds(out, "served", stage.served());
    }

    private static void candidate(JsonWriter out, Sureness.CandidateOdds candidate) {
        out.text("class", candidate.planned().kind().id())
                .text("name", candidate.planned().kind().name());
        odds(out, "served", candidate.served());
        odds(out, "fits", candidate.fits());
    }

    private static void odds(JsonWriter out, String key, Odds odds) {
        out.object(key, inner -> {
            Keys.number(inner, "share", odds.share());
            Keys.number(inner, "least_share", odds.leastShare());
            Keys.number(inner, "most_share", odds.mostShare());
        });
    }

    private static void weight(JsonWriter out, Weight weight) {
        out.word("input", weight.spread());
        Keys.number(out, weight.spread() == Spread.DEPTH ? "half_width_m" : "half_width_share", weight.width());
        Keys.number(out, "share", weight.share());
        band(out, "reserve_share", weight.alone());
    }
}
