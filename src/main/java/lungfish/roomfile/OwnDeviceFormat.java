package lungfish.roomfile;

import static lungfish.roomfile.Ranges.BORE_M;
import static lungfish.roomfile.Ranges.FLOW_M3_PER_S;
import static lungfish.roomfile.Ranges.LINEAR_LOSS;
import static lungfish.roomfile.Ranges.LOSS_FACTOR;
import static lungfish.roomfile.Ranges.NO_FLOW_M3_PER_S;
import static lungfish.roomfile.Ranges.NO_GAUGE_PA;
import static lungfish.roomfile.Ranges.SQUARE_LOSS;

import lungfish.catalogue.DeviceClass;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;

/** A device class of the keeper's own. */
final class OwnDeviceFormat {
    private OwnDeviceFormat() {}

    static DeviceClass read(Fields in) {
        return new DeviceClass(
                in.id("id"),
                in.text("name"),
                in.word("kind", DeviceClass.Kind.class),
                in.object("clean", OwnDeviceFormat::readResistance),
                in.object("due", OwnDeviceFormat::readResistance),
                in.number("least_m3_per_s", NO_FLOW_M3_PER_S),
                in.number("typical_m3_per_s", FLOW_M3_PER_S),
                in.maybeNumber("most_m3_per_s", FLOW_M3_PER_S),
                in.word("bubbles", DeviceClass.Bubbles.class),
                in.maybeObject("uplift", OwnDeviceFormat::readUplift),
                in.text("source"));
    }

    static void write(JsonWriter out, DeviceClass device) {
        out.text("id", device.id())
                .text("name", device.name())
                .word("kind", device.kind())
                .flatObject("clean", inner -> writeResistance(inner, device.clean()))
                .flatObject("due", inner -> writeResistance(inner, device.due()))
                .number("least_m3_per_s", device.leastM3PerS())
                .number("typical_m3_per_s", device.typicalM3PerS())
                .maybeNumber("most_m3_per_s", device.mostM3PerS())
                .word("bubbles", device.bubbles())
                .maybeFlatObject("uplift", device.uplift(), OwnDeviceFormat::writeUplift)
                .text("source", device.source());
    }

    private static DeviceClass.Resistance readResistance(Fields in) {
        return new DeviceClass.Resistance(
                in.number("p0_pa", NO_GAUGE_PA),
                in.number("a_pa_s_per_m3", LINEAR_LOSS),
                in.number("b_pa_s2_per_m6", SQUARE_LOSS));
    }

    private static void writeResistance(JsonWriter out, DeviceClass.Resistance resistance) {
        out.number("p0_pa", resistance.p0Pa())
                .number("a_pa_s_per_m3", resistance.aPaSPerM3())
                .number("b_pa_s2_per_m6", resistance.bPaS2PerM6());
    }

    private static DeviceClass.Uplift readUplift(Fields in) {
        return new DeviceClass.Uplift(in.number("bore_m", BORE_M), in.number("loss_factor", LOSS_FACTOR));
    }

    private static void writeUplift(JsonWriter out, DeviceClass.Uplift uplift) {
        out.number("bore_m", uplift.boreM()).number("loss_factor", uplift.lossFactor());
    }
}
