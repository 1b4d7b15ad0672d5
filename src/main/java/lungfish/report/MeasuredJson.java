package lungfish.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lungfish.json.JsonWriter;
import lungfish.measured.Fitted;
import lungfish.measured.LeakPlace;
import lungfish.measured.MeasuredRoom;
import lungfish.measured.NextReading;
import lungfish.measured.Suspect;
import lungfish.piping.Stretch;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.ReadingId;

/** A measured room as JSON, as docs/schemas/fit.schema.json says: SI units, named in the keys. */
public final class MeasuredJson {
    private MeasuredJson() {}

    /**
     * The whole answer.
     *
     * @param quantities the units of the sentences in it
     * @param measured empty: nothing was read that tells anything
     */
    public static String text(Plan plan, Quantities quantities, Optional<MeasuredRoom> measured) {
        return JsonWriter.text(out -> {
            out.text("format", "lungfish-fit").whole("version", 1);
            out.text("room", plan.room().name());
            ReasonsJson.of(plan, quantities).problems(out, plan.findings());
            if (measured.isPresent()) {
                out.object("measured", inner -> measured(inner, measured.get()));
            } else {
                out.nothing("measured");
            }
        });
    }

    private static void measured(JsonWriter out, MeasuredRoom measured) {
        out.text("set_on", measured.setOn().toString())
                .text("read_on", measured.on().toString());
        out.whole("readings", measured.readings());
        out.text("verdict", key(measured.verdict()));
        out.objects("suspects", measured.suspects(), MeasuredJson::suspect);
        if (measured.fitted().isPresent()) {
            out.object("fitted", inner -> fitted(inner, measured.fitted().get()));
        } else {
            out.nothing("fitted");
        }
        out.objects("places", measured.places(), MeasuredJson::place);
        if (measured.next().isPresent()) {
            out.object("next", inner -> next(inner, measured.next().get()));
        } else {
            out.nothing("next");
        }
        out.texts(
                "doubtful",
                measured.doubtful().stream()
                        .map(each -> each.id())
                        .map(ReadingId::text)
                        .toList());
        out.texts(
                "unused",
                measured.unused().stream()
                        .map(each -> each.id())
                        .map(ReadingId::text)
                        .toList());
    }

    private static void suspect(JsonWriter out, Suspect suspect) {
        out.text("culprit", key(suspect.culprit().kind()));
        suspect.culprit()
                .outlet()
                .map(OutletId::text)
                .ifPresentOrElse(id -> out.text("outlet", id), () -> out.nothing("outlet"));
        out.number("probability", suspect.probability());
    }

    private static void fitted(JsonWriter out, Fitted fitted) {
        out.number("size", fitted.happening().size()).number("size_sd", fitted.sizeSd());
        out.number("leak_m3_per_s", fitted.leakM3PerS()).number("leak_sd_m3_per_s", fitted.leakSdM3PerS());
        out.object("blower", inner -> inner.number(
                        "share_when_set", fitted.blower().whenSet())
                .number("share", fitted.blower().share())
                .number("share_sd", fitted.blower().sd())
                .number("left_by_age", fitted.blower().byAge()));
        out.objects("devices", fitted.devices(), (inner, takes) -> inner.text("class", takes.id())
                .number("factor", takes.factor())
                .number("more_pa", takes.morePa())
                .number("more_sd_pa", takes.sdPa()));
        out.texts("other_devices", fitted.others().stream().map(OutletId::text).toList());
    }

    private static void place(JsonWriter out, LeakPlace place) {
        out.number("probability", place.probability());
        out.objects("stretches", place.stretches(), (inner, stretch) -> stretch(inner, stretch));
    }

    private static void stretch(JsonWriter out, Stretch stretch) {
        out.text("run", stretch.run().text()).number("from_m", stretch.fromM()).number("to_m", stretch.toM());
    }

    private static void next(JsonWriter out, NextReading next) {
        String kind = next instanceof NextReading.Jar ? "jar" : next instanceof NextReading.Gauge ? "gauge" : "fall";
        out.text("kind", kind);
        if (next instanceof NextReading.Jar jar) {
            out.text("outlet", jar.outlet().text());
        } else {
            out.nothing("outlet");
        }
        List<Outlet.OnRun> shut = next instanceof NextReading.Fall fall ? fall.shut() : List.of();
        out.objects(
                "shut", shut, (inner, valve) -> inner.text("run", valve.run().text())
                        .number("at_m", valve.atM()));
        out.number("bits", next.bits());
    }

    private static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
