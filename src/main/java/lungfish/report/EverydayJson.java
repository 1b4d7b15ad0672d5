package lungfish.report;

import java.util.List;
import lungfish.everyday.Bleed;
import lungfish.everyday.Blowers;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Held;
import lungfish.everyday.Moved;
import lungfish.everyday.Order;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;

/** What everyday disturbances do, as docs/schemas/everyday.schema.json says. */
public final class EverydayJson {
    private final Plan plan;
    private final Quantities quantities;
    private final Names names;
    private final ReasonsJson reasons;

    private EverydayJson(Plan plan, Quantities quantities) {
        this.plan = plan;
        this.quantities = quantities;
        this.names = new Names(plan.room());
        this.reasons = ReasonsJson.of(plan, quantities);
    }

    /**
     * For programs.
     *
     * @param isTunedFirst whether every valve stood at its coarse start, not as filed
     */
    public static String text(Plan plan, Quantities quantities, boolean isTunedFirst, List<EverydayReport.Told> all) {
        return JsonWriter.text(out -> new EverydayJson(plan, quantities).write(out, isTunedFirst, all));
    }

    private void write(JsonWriter out, boolean isTunedFirst, List<EverydayReport.Told> all) {
        out.text("format", "lungfish-everyday").whole("version", 1);
        out.text("room", plan.room().name());
        reasons.problems(out, plan.findings());
        out.truth("tuned_first", isTunedFirst);
        out.objects("disturbances", all, this::told);
    }

    private void told(JsonWriter out, EverydayReport.Told told) {
        out.word("kind", told.kind());
        Keys.word(out, "lack", told.lack());
        Keys.object(out, "answer", told.answer(), this::answer);
    }

    private void answer(JsonWriter out, Disturbed answer) {
        EverydayWords words = new EverydayWords(answer, quantities, names);
        out.text("headline", words.headline()).text("because", words.because());
        out.texts("advice", new EverydayAdvice(answer, quantities, names).says());
        out.truth("retune", answer.isRetuned());
        blowers(out, answer.blowers());
        Keys.object(out, "order", answer.order(), EverydayJson::order);
        Keys.object(out, "bleed", answer.bleed(), EverydayJson::bleed);
        reasons.findings(out, answer.findings());
        out.flatObjects("hit", answer.hit(), EverydayJson::moved);
        out.flatObjects("others", answer.others(), EverydayJson::moved);
    }

    private static void blowers(JsonWriter out, Blowers blowers) {
        Keys.number(out, "pressure_before_pa", blowers.gaugeBeforePa());
        Keys.number(out, "pressure_after_pa", blowers.gaugeAfterPa());
        Keys.number(out, "bled_before_m3_per_s", blowers.bledBeforeM3PerS());
        Keys.number(out, "bled_after_m3_per_s", blowers.bledAfterM3PerS());
        out.object("hardest_tired", inner -> held(inner, blowers.tired()));
        out.object("hardest_new", inner -> held(inner, blowers.fresh()));
    }

    private static void held(JsonWriter out, Held held) {
        out.text("machine", held.machine());
        Keys.number(out, "before_pa", held.beforePa());
        Keys.number(out, "after_pa", held.afterPa());
        Keys.number(out, "continuous_pressure_pa", held.continuousPa());
        out.truth("too_high", held.isTooHigh());
    }

    private static void order(JsonWriter out, Order order) {
        out.truth("shut_bleed", order.isBleedShut());
        Keys.number(out, "share", order.share());
        Keys.number(out, "most_miss_share", order.restShare());
        out.flatObjects("turns", order.turns(), (one, turn) -> {
            one.text("id", turn.need().id().text());
            Keys.number(one, "from_opening", turn.from());
            Keys.number(one, "to_opening", turn.to());
            Keys.number(one, "aim_m3_per_s", turn.aimM3PerS());
            Keys.number(one, "then_m3_per_s", turn.freeM3PerS());
        });
    }

    private static void bleed(JsonWriter out, Bleed bleed) {
        out.truth("holds", bleed.holds());
        Keys.number(out, "pressure_pa", bleed.gaugePa());
        Keys.number(out, "bled_m3_per_s", bleed.bledM3PerS());
        Keys.number(out, "more_m3_per_s", bleed.moreM3PerS());
        Keys.number(out, "most_change_share", bleed.restShare());
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
