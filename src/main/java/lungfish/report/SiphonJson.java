package lungfish.report;

import lungfish.json.JsonWriter;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Point;
import lungfish.room.Seat;
import lungfish.siphon.Leaving;
import lungfish.siphon.Reached;
import lungfish.siphon.Siphons;
import lungfish.siphon.WaterPath;
import lungfish.siphon.Way;

/** The ways that water could take, as JSON. */
final class SiphonJson {
    private final Siphons siphons;

    SiphonJson(Siphons siphons) {
        this.siphons = siphons;
    }

    void write(JsonWriter out) {
        out.objects("ways", siphons.ways(), this::way);
        out.flatObjects("check_valves_at", siphons.leaving(), SiphonJson::leaving);
        siphons.safeHeightM()
                .ifPresentOrElse(height -> Keys.number(out, "pipe_above_m", height), () -> out.nothing("pipe_above_m"));
    }

    private static void leaving(JsonWriter out, Leaving leaving) {
        outlet(out, leaving.outlet());
        out.word("check_valve", leaving.checkValve());
        Keys.number(out, "water_line_m", leaving.lineM());
    }

    private static void outlet(JsonWriter out, Seat seat) {
        Outlet outlet = seat.outlet();
        OutletId id = outlet.id();
        out.text("outlet", id.text()).text("tank", seat.tank().id().text());
    }

    private void way(JsonWriter out, Way way) {
        WaterPath path = siphons.path(way);
        out.word("start", way.start());
        out.flatObject("from", inner -> leaving(inner, way.from()));
        out.flatObject("into", inner -> into(inner, way.into()));
        Keys.number(out, "crest_m", way.crestM());
        Keys.number(out, "lift_m", way.liftM());
        Keys.number(out, "over_own_rim_m", way.from().overRimM());
        Keys.number(out, "water_m3", way.waterM3());
        Keys.number(out, "runs_over_m3", way.overM3());
        out.flatObjects("path", path.points(), SiphonJson::point);
    }

    private static void into(JsonWriter out, Reached into) {
        if (into instanceof Reached.ByOutlet lower) {
            outlet(out, lower.outlet());
            out.nothing("blower");
        } else {
            out.nothing("outlet").nothing("tank");
            out.text("blower", into.part().id());
        }
        Keys.number(out, "water_line_m", into.lineM());
        Keys.number(out, "free_m3", into.freeM3());
    }

    private static void point(JsonWriter out, Point point) {
        out.number("x_m", point.xM()).number("y_m", point.yM()).number("z_m", point.zM());
    }
}
