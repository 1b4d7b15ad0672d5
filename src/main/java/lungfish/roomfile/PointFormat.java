package lungfish.roomfile;

import static lungfish.roomfile.Ranges.ALONG_RUN_M;
import static lungfish.roomfile.Ranges.PLACE_M;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Outlet;
import lungfish.room.Point;
import lungfish.room.RunId;

/** Places: in the room, and along a run. */
final class PointFormat {
    private PointFormat() {}

    static Point read(Fields in) {
        return new Point(in.number("x_m", PLACE_M), in.number("y_m", PLACE_M), in.number("z_m", PLACE_M));
    }

    static void write(JsonWriter out, Point point) {
        out.number("x_m", point.xM()).number("y_m", point.yM()).number("z_m", point.zM());
    }

    static Outlet.OnRun readOnRun(Fields in) {
        return new Outlet.OnRun(new RunId(in.id("run")), in.number("at_m", ALONG_RUN_M));
    }

    static void writeOnRun(JsonWriter out, Outlet.OnRun tap) {
        out.text("run", tap.run().text()).number("at_m", tap.atM());
    }
}
