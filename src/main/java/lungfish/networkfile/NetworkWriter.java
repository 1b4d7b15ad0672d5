package lungfish.networkfile;

import java.util.List;
import lungfish.json.JsonWriter;
import lungfish.network.Check;
import lungfish.network.Conditions;
import lungfish.network.Curve;
import lungfish.network.Device;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Pipe;
import lungfish.network.Source;
import lungfish.network.Tubing;

/**
 * Writes a network file: every number in full, none left to a default, so that another program needs none of ours. What
 * was written reads as an equal network.
 */
public final class NetworkWriter {
    private NetworkWriter() {}

    /** The text of the file. */
    public static String text(Network network) {
        return JsonWriter.text(out -> write(out, network));
    }

    private static void write(JsonWriter out, Network network) {
        out.text("format", NetworkReader.FORMAT).maybeText("title", network.title());
        conditions(out, network.conditions());
        out.texts("nodes", network.nodes())
                .flatObjects("pipes", network.pipes(), NetworkWriter::pipe)
                .flatObjects("drops", network.drops(), NetworkWriter::drop)
                .objects("sources", network.sources(), NetworkWriter::source);
    }

    private static void conditions(JsonWriter out, Conditions conditions) {
        out.object("room", room -> room.number("ambient_pa", conditions.ambientPa())
                .number("temperature_k", conditions.roomTemperatureK())
                .number("pipe_temperature_k", conditions.pipeTemperatureK()));
        out.object("water", water -> water.number("density_kg_m3", conditions.waterDensityKgPerM3())
                .number("g", conditions.gravityMPerS2()));
        out.object("conventions", conventions -> conventions
                .truth("log_term", conditions.logTerm())
                .number("served_band", conditions.servedBand()));
    }

    private static void pipe(JsonWriter out, Pipe pipe) {
        out.text("id", pipe.id()).text("from", pipe.from()).text("to", pipe.to());
        tubing(out, new Tubing(pipe.lengthM(), pipe.boreM(), pipe.roughnessM(), pipe.kSum()));
    }

    private static void tubing(JsonWriter out, Tubing tubing) {
        out.number("length_m", tubing.lengthM())
                .number("bore_m", tubing.boreM())
                .number("roughness_m", tubing.roughnessM())
                .number("k_sum", tubing.kSum());
    }

    private static void drop(JsonWriter out, Drop drop) {
        out.text("id", drop.id())
                .text("node", drop.node())
                .number("valve_k", drop.valveK())
                .number("valve_k_open", drop.valveKOpen())
                .maybeObject("airline", drop.airline(), NetworkWriter::tubing)
                .maybeObject("check", drop.check(), NetworkWriter::check)
                .maybeObject("device", drop.device(), NetworkWriter::device)
                .number("depth_m", drop.depthM())
                .maybeNumber("target_m3s", drop.targetM3PerS());
    }

    private static void check(JsonWriter out, Check check) {
        out.number("open_pa", check.openPa()).number("slope_pa_s_m3", check.slopePaSPerM3());
    }

    private static void device(JsonWriter out, Device device) {
        out.number("p0_pa", device.p0Pa()).number("a", device.aPaSPerM3()).number("b", device.bPaS2PerM6());
    }

    private static void source(JsonWriter out, Source source) {
        out.text("id", source.id()).text("node", source.node());
        if (source instanceof Source.FixedPressure fixed) {
            out.text("type", "fixed").number("gauge_pa", fixed.gaugePa());
        } else if (source instanceof Source.Blower blower) {
            out.text("type", "blower").rows("curve", rows(blower.curve())).whole("count", blower.count());
        }
    }

    private static List<double[]> rows(Curve curve) {
        return curve.points().stream()
                .map(point -> new double[] {point.gaugePa(), point.freeM3PerS()})
                .toList();
    }
}
