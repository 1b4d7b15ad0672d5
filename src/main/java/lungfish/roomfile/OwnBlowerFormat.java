package lungfish.roomfile;

import static lungfish.roomfile.Ranges.BORE_M;
import static lungfish.roomfile.Ranges.DRAWN_W;
import static lungfish.roomfile.Ranges.FLOW_M3_PER_S;
import static lungfish.roomfile.Ranges.FREQUENCY_HZ;
import static lungfish.roomfile.Ranges.GAUGE_PA;
import static lungfish.roomfile.Ranges.LEVEL_DB;
import static lungfish.roomfile.Ranges.MONEY;
import static lungfish.roomfile.Ranges.NEAR_M;
import static lungfish.roomfile.Ranges.NO_FLOW_M3_PER_S;
import static lungfish.roomfile.Ranges.NO_GAUGE_PA;
import static lungfish.roomfile.Ranges.SECONDS;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.SOME_SHARE;
import static lungfish.roomfile.Ranges.SURGE;
import static lungfish.roomfile.Ranges.VOLTAGE_V;

import lungfish.catalogue.BlowerClass;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;

/** A blower class of the keeper's own, typed from its data sheet. */
final class OwnBlowerFormat {
    private OwnBlowerFormat() {}

    static BlowerClass read(Fields in) {
        return new BlowerClass(
                in.id("id"),
                in.text("name"),
                in.word("kind", BlowerClass.Kind.class),
                in.number("rated_m3_per_s", FLOW_M3_PER_S),
                in.number("rated_gauge_pa", NO_GAUGE_PA),
                in.objects("curve", OwnBlowerFormat::readPoint),
                in.number("continuous_gauge_pa", GAUGE_PA),
                in.maybeObject("level", OwnBlowerFormat::readLevel),
                in.number("port_bore_m", BORE_M),
                in.number("price_low", MONEY),
                in.number("price_high", MONEY),
                in.number("rebuild_price", MONEY),
                in.number("rebuild_s", SECONDS),
                in.number("life_s", SECONDS),
                in.number("tired_share", SOME_SHARE),
                in.number("least_share", SHARE),
                in.number("efficiency", SOME_SHARE),
                in.number("surge_factor", SURGE),
                in.maybeNumber("voltage_v", VOLTAGE_V),
                in.maybeNumber("frequency_hz", FREQUENCY_HZ),
                in.text("source"));
    }

    static void write(JsonWriter out, BlowerClass blower) {
        out.text("id", blower.id())
                .text("name", blower.name())
                .word("kind", blower.kind())
                .number("rated_m3_per_s", blower.ratedM3PerS())
                .number("rated_gauge_pa", blower.ratedPa())
                .flatObjects("curve", blower.points(), OwnBlowerFormat::writePoint)
                .number("continuous_gauge_pa", blower.continuousPa())
                .maybeFlatObject("level", blower.level(), OwnBlowerFormat::writeLevel)
                .number("port_bore_m", blower.portM())
                .number("price_low", blower.priceLow())
                .number("price_high", blower.priceHigh())
                .number("rebuild_price", blower.rebuildPrice())
                .number("rebuild_s", blower.rebuildS())
                .number("life_s", blower.lifeS())
                .number("tired_share", blower.tiredShare())
                .number("least_share", blower.leastShare())
                .number("efficiency", blower.efficiency())
                .number("surge_factor", blower.surgeFactor())
                .maybeNumber("voltage_v", blower.voltageV())
                .maybeNumber("frequency_hz", blower.frequencyHz())
                .text("source", blower.source());
    }

    private static BlowerClass.CurvePoint readPoint(Fields in) {
        return new BlowerClass.CurvePoint(
                in.number("gauge_pa", NO_GAUGE_PA),
                in.number("free_m3_per_s", NO_FLOW_M3_PER_S),
                in.number("power_w", DRAWN_W));
    }

    private static void writePoint(JsonWriter out, BlowerClass.CurvePoint point) {
        out.number("gauge_pa", point.gaugePa())
                .number("free_m3_per_s", point.freeM3PerS())
                .number("power_w", point.watts());
    }

    private static BlowerClass.Level readLevel(Fields in) {
        return new BlowerClass.Level(in.number("dba", LEVEL_DB), in.number("distance_m", NEAR_M));
    }

    private static void writeLevel(JsonWriter out, BlowerClass.Level level) {
        out.number("dba", level.dba()).number("distance_m", level.distanceM());
    }
}
