package lungfish.report;

import java.util.List;
import java.util.Optional;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Mend;
import lungfish.growth.Place;
import lungfish.growth.RackFit;
import lungfish.growth.Repair;
import lungfish.growth.Stage;
import lungfish.growth.Stages;
import lungfish.headroom.Newcomer;
import lungfish.json.JsonWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.RunId;

/** How a room grows, as JSON, as docs/schemas/stages.schema.json says. */
public final class GrowthJson {
    private final GrowthWords words;
    private final ReasonsJson reasons;

    private GrowthJson(Plan plan, Quantities quantities) {
        Names names = new Names(plan.room());
        this.words = new GrowthWords(quantities, names);
        this.reasons = new ReasonsJson(names, new Sentences(quantities, names));
    }

    /** The text; sentences in it are in the units of the reader. */
    public static String text(Plan plan, Optional<Stages> stages, Optional<HeadroomMap> map, Quantities quantities) {
        GrowthJson json = new GrowthJson(plan, quantities);
        return JsonWriter.text(out -> {
            out.text("format", "lungfish-stages").whole("version", 1);
            out.text("room", plan.room().name());
            json.reasons.problems(out, plan.findings());
            Keys.object(out, "blower", stages, GrowthJson::blower);
            out.objects("stages", stages.map(Stages::all).orElse(List.of()), json::stage);
            Keys.object(out, "bought_today", stages.flatMap(Stages::foresight), GrowthJson::foresight);
            Keys.object(out, "map", map, json::map);
        });
    }

    private static void blower(JsonWriter out, Stages stages) {
        out.text("name", stages.blower().name())
                .text("class", stages.blower().kind().id())
                .whole("machines", stages.blower().machines())
                .truth("recommended", stages.recommended());
    }

    private void stage(JsonWriter out, Stage stage) {
        out.whole("step", stage.when().number());
        Keys.text(out, "name", stage.when().name());
        out.texts("racks", stage.when().added().stream().map(RackId::text).toList());
        out.whole("outlets", stage.outlets()).word("state", stage.state());
        Keys.number(out, "needed_pressure_pa", stage.needed().pressurePa());
        Keys.number(out, "needed_free_air_m3_per_s", stage.needed().freeM3PerS());
        Stage.Standing standing = stage.standing();
        Keys.number(out, "running_pressure_pa", standing.blower().tired().gaugePa());
        Keys.number(out, "running_free_air_m3_per_s", standing.blower().tired().freeM3PerS());
        Keys.number(out, "reserve_share", standing.blower().reserveShare());
        Keys.number(out, "noise_dba", standing.blower().dba());
        out.whole("more_outlets", standing.headroom().outlets());
        Keys.number(out, "free_air_left_m3_per_s", standing.headroom().freeM3PerS());
        Keys.object(out, "breaks", standing.breaks(), DutyJson::broken);
        Keys.object(out, "mend", standing.repair(), this::repair);
        reasons.findings(out, stage.findings());
    }

    private void repair(JsonWriter out, Repair repair) {
        out.whole("tried", repair.tried())
                .truth("mends", repair.mend().isPresent() && repair.still().isEmpty());
        Keys.text(out, "says", repair.mend().map(words::mend));
        Keys.object(out, "leaves_unmet", repair.still(), DutyJson::broken);
        out.objects("steps", repair.mend().map(GrowthJson::steps).orElse(List.of()), this::step);
        Keys.number(
                out, "price", repair.mend().stream().mapToDouble(Mend::price).findFirst());
    }

    private static List<Mend> steps(Mend mend) {
        return mend instanceof Mend.Together together ? together.steps() : List.of(mend);
    }

    private void step(JsonWriter out, Mend mend) {
        out.text("says", words.mend(mend));
        Keys.number(out, "price", mend.price());
    }

    private static void foresight(JsonWriter out, Stages.Foresight foresight) {
        out.text("class", foresight.kind().id()).whole("machines", foresight.machines());
        Keys.number(out, "price", foresight.price());
        Keys.number(out, "price_more_than_now", foresight.more());
    }

    private void map(JsonWriter out, HeadroomMap map) {
        out.object("new_outlet", inner -> newcomer(inner, map.newcomer()));
        out.whole("fewest", map.least()).whole("most", map.most()).truth("place_matters", map.placeMatters());
        Keys.object(out, "best", map.best(), GrowthJson::place);
        out.flatObjects("places", map.places(), GrowthJson::place);
        out.objects("planned_racks", map.racks(), GrowthJson::rack);
    }

    private static void newcomer(JsonWriter out, Newcomer newcomer) {
        out.text("device", newcomer.device().id())
                .text("like_outlet", newcomer.like().id().text());
        Keys.number(out, "depth_m", newcomer.depthM());
        Keys.number(out, "free_air_m3_per_s", newcomer.targetM3PerS());
    }

    private static void place(JsonWriter out, Place place) {
        on(out, place.run(), place.alongM(), place.at());
        out.truth("tap", place.isTap()).whole("more_outlets", place.outlets());
        Keys.word(out, "limit", place.fits().limit().map(broken -> broken.limit()));
    }

    private static void on(JsonWriter out, RunId run, double alongM, Point at) {
        out.text("run", run.text());
        Keys.number(out, "at_m", alongM);
        Keys.number(out, "x_m", at.xM());
        Keys.number(out, "y_m", at.yM());
        Keys.number(out, "z_m", at.zM());
    }

    private static void rack(JsonWriter out, RackFit rack) {
        out.text("rack", rack.rack().text()).whole("outlets", rack.outlets()).truth("fits", rack.fits());
        Keys.object(out, "breaks", rack.breaks(), DutyJson::broken);
        out.whole("more_outlets", rack.own().outlets());
        Keys.object(out, "best", rack.best(), (inner, best) -> {
            on(inner, best.run(), best.alongM(), best.at());
            inner.whole("more_outlets", best.fits().outlets());
        });
    }
}
