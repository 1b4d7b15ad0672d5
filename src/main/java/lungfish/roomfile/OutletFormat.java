package lungfish.roomfile;

import static lungfish.roomfile.Ranges.FLOW_M3_PER_S;
import static lungfish.roomfile.Ranges.HEIGHT_M;
import static lungfish.roomfile.Ranges.NO_FLOW_M3_PER_S;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.TUBING_M;
import static lungfish.roomfile.Ranges.TURNOVER_PER_S;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;

/** Outlets: a device, its airline, valve and tap. */
final class OutletFormat {
    private OutletFormat() {}

    static Outlet read(Fields in) {
        return new Outlet(
                new OutletId(in.id("id")),
                in.id("device"),
                readFlow(in),
                in.maybeNumber("depth_m", HEIGHT_M),
                in.maybeObject("airline", OutletFormat::readAirline),
                in.maybeObject("valve", OutletFormat::readValve),
                in.maybeId("check_valve"),
                in.word("use", Outlet.Use.class),
                in.maybeTruth("essential"),
                in.maybeObject("tap", OutletFormat::readTap));
    }

    static void write(JsonWriter out, Outlet outlet) {
        out.text("id", outlet.id().text()).text("device", outlet.device());
        writeFlow(out, outlet.flow());
        out.maybeNumber("depth_m", outlet.depthM())
                .maybeFlatObject("airline", outlet.airline(), OutletFormat::writeAirline)
                .maybeFlatObject("valve", outlet.valve(), OutletFormat::writeValve)
                .maybeText("check_valve", outlet.checkValve())
                .word("use", outlet.use())
                .maybeTruth("essential", outlet.essential())
                .maybeFlatObject("tap", outlet.tap(), OutletFormat::writeTap);
    }

    private static Outlet.Flow readFlow(Fields in) {
        return new Outlet.Flow(
                in.maybeNumber("least_m3_per_s", NO_FLOW_M3_PER_S),
                in.maybeNumber("target_m3_per_s", FLOW_M3_PER_S),
                in.maybeNumber("most_m3_per_s", FLOW_M3_PER_S),
                in.maybeNumber("turnover_per_s", TURNOVER_PER_S));
    }

    private static void writeFlow(JsonWriter out, Outlet.Flow flow) {
        out.maybeNumber("least_m3_per_s", flow.leastM3PerS())
                .maybeNumber("target_m3_per_s", flow.targetM3PerS())
                .maybeNumber("most_m3_per_s", flow.mostM3PerS())
                .maybeNumber("turnover_per_s", flow.turnoverPerS());
    }

    static Outlet.Airline readAirline(Fields in) {
        return new Outlet.Airline(in.maybeId("size"), in.maybeNumber("length_m", TUBING_M));
    }

    static void writeAirline(JsonWriter out, Outlet.Airline airline) {
        out.maybeText("size", airline.size()).maybeNumber("length_m", airline.lengthM());
    }

    private static Outlet.Valve readValve(Fields in) {
        return new Outlet.Valve(in.id("kind"), in.maybeNumber("opening", SHARE));
    }

    private static void writeValve(JsonWriter out, Outlet.Valve valve) {
        out.text("kind", valve.kind()).maybeNumber("opening", valve.opening());
    }

    private static Outlet.Tap readTap(Fields in) {
        return in.has("gang") ? new Outlet.OnGang(new GangId(in.id("gang"))) : PointFormat.readOnRun(in);
    }

    private static void writeTap(JsonWriter out, Outlet.Tap tap) {
        if (tap instanceof Outlet.OnGang onGang) {
            out.text("gang", onGang.gang().text());
        } else if (tap instanceof Outlet.OnRun onRun) {
            PointFormat.writeOnRun(out, onRun);
        }
    }
}
