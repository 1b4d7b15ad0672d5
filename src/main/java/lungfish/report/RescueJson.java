package lungfish.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import lungfish.json.JsonWriter;
import lungfish.quantity.Quantities;
import lungfish.rescue.Cheapest;
import lungfish.rescue.Kept;
import lungfish.rescue.Lost;
import lungfish.rescue.Means;
import lungfish.rescue.Outcome;
import lungfish.rescue.Rescue;
import lungfish.rescue.Second;
import lungfish.rescue.SecondLine;
import lungfish.rescue.Tried;
import lungfish.rescue.Unfit;
import lungfish.room.Room;
import lungfish.standing.StandingAnswer;

/** What keeps the tanks of a room alive, and its second line, as JSON, as docs/schemas/rescue.schema.json says. */
public final class RescueJson {
    private static final double KG_PER_G = 1e-3;

    private final MeansWords means;
    private final Function<Rescue, RescueWords> words;

    private RescueJson(Room room, Quantities quantities) {
        Names names = new Names(room);
        this.means = new MeansWords(quantities, names);
        this.words = rescue -> new RescueWords(rescue, quantities, names);
    }

    /**
     * The whole answer.
     *
     * @param rescue empty where nothing gives air, as {@code second} then is
     * @param ways how each way to give the room its air stands up to failures
     * @param quantities the units of the sentences in it
     */
    public static String text(
            Room room,
            Optional<Rescue> rescue,
            Optional<SecondLine> second,
            StandingAnswer ways,
            Quantities quantities) {
        RescueJson json = new RescueJson(room, quantities);
        return JsonWriter.text(out -> {
            out.text("format", "lungfish-rescue").whole("version", 1);
            out.text("room", room.name());
            Keys.object(out, "means", rescue, json::rescue);
            Keys.object(out, "second_line", second, RescueJson::second);
            out.object("redundancy", inner -> StandingJson.node(inner, ways));
        });
    }

    private void rescue(JsonWriter out, Rescue rescue) {
        Keys.number(out, "wanted_s", rescue.wantedS().si());
        out.truth("wanted_assumed", rescue.wantedS().isAssumed());
        Keys.number(out, "blower_replaced_s", rescue.habits().replacedS());
        out.text("air_of", rescue.plannedBlower() ? "planned_blower" : "small_pumps");
        out.whole("judged", rescue.judged()).whole("essential_judged", rescue.essentialJudged());
        RescueWords says = words.apply(rescue);
        out.objects("cheapest", rescue.sets(), (inner, set) -> cheapest(inner, set, says));
        out.object("now", inner -> tried(inner, rescue.now()));
        out.objects("tried", rescue.tried(), this::tried);
        out.objects("no_class_large_enough", rescue.unfit(), RescueJson::unfit);
    }

    private void cheapest(JsonWriter out, Cheapest cheapest, RescueWords says) {
        out.word("goal", cheapest.goal())
                .whole("asked", cheapest.asked())
                .truth("keeps_all", cheapest.keepsAll())
                .text("says", says.headline(cheapest));
        Keys.number(out, "price", cheapest.set().price());
        things(out, cheapest.set().means());
        outcome(out, cheapest.outcome());
        out.objects("lost", cheapest.lost(), RescueJson::lost);
    }

    private static void lost(JsonWriter out, Lost lost) {
        out.text("tank", lost.vessel().tank().id().text())
                .word("hazard", lost.hazard())
                .word("why", lost.why());
        Keys.number(out, "danger_s", lost.dangerS());
    }

    private void tried(JsonWriter out, Tried tried) {
        Keys.number(out, "price", tried.set().price());
        things(out, tried.set().means());
        outcome(out, tried.outcome());
        Keys.number(out, "full_again_s", tried.fullAgainS());
    }

    private void things(JsonWriter out, List<Means> all) {
        out.objects("things", all, (inner, each) -> {
            inner.text("says", means.says(each));
            Keys.number(inner, "price", each.price());
            inner.texts(
                    "against",
                    each.against().stream()
                            .map(hazard -> hazard.name().toLowerCase(Locale.ROOT))
                            .toList());
        });
    }

    private static void outcome(JsonWriter out, Outcome outcome) {
        out.flatObject("mains", inner -> kept(inner, outcome.mains()));
        out.flatObject("blower", inner -> kept(inner, outcome.blower()));
    }

    private static void kept(JsonWriter out, Kept kept) {
        out.whole("safe", kept.safe()).whole("essential_safe", kept.essentialSafe());
        Keys.number(out, "air_from_s", kept.airFromS());
        Keys.number(out, "air_to_s", kept.airToS());
    }

    private static void unfit(JsonWriter out, Unfit unfit) {
        out.word("kind", unfit.kind());
        Keys.number(out, "asked_w", unfit.askedW());
        Keys.number(out, "asked_surge_w", unfit.askedSurgeW());
    }

    private static void second(JsonWriter out, SecondLine line) {
        Keys.number(out, "saved_w", line.savedW());
        Keys.number(out, "saved_price_per_year", line.savedPerYear());
        out.whole("power_not_said", line.unknownW());
        out.objects("stirrers", line.all(), RescueJson::stirrer);
    }

    private static void stirrer(JsonWriter out, Second second) {
        out.text("id", second.stirrer().id().text())
                .text("tank", second.vessel().tank().id().text())
                .word("kind", second.stirrer().kind())
                .truth("may_go", second.mayGo());
        out.texts(
                "stays",
                second.stays().stream()
                        .sorted()
                        .map(stay -> stay.name().toLowerCase(Locale.ROOT))
                        .toList());
        Keys.number(out, "power_w", second.stirrer().powerW());
        Keys.number(out, "turnover_per_s", second.air().turnoverPerS());
        Keys.number(out, "wished_turnover_per_s", second.air().wishedPerS());
        Keys.number(
                out,
                "oxygen_kg_per_m3",
                second.air().oxygenGPerM3().stream()
                        .map(each -> KG_PER_G * each)
                        .findFirst());
        out.objects("outages", second.outages(), RescueJson::effect);
    }

    private static void effect(JsonWriter out, Second.Effect effect) {
        out.word("outage", effect.outage());
        Keys.number(out, "until_s", effect.untilS());
        out.flatObject("danger_with", inner -> danger(inner, effect.with()));
        out.flatObject("danger_without", inner -> danger(inner, effect.without()));
    }

    private static void danger(JsonWriter out, Second.Danger danger) {
        Keys.number(out, "likely_s", danger.likelyS());
        Keys.number(out, "cautious_s", danger.cautiousS());
    }
}
