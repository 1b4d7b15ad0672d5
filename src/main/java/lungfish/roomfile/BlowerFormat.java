package lungfish.roomfile;

import static lungfish.roomfile.Ranges.AGE_S;
import static lungfish.roomfile.Ranges.BORE_M;
import static lungfish.roomfile.Ranges.GAUGE_PA;
import static lungfish.roomfile.Ranges.HEIGHT_M;
import static lungfish.roomfile.Ranges.LEVEL_DB;
import static lungfish.roomfile.Ranges.MOST_MACHINES;
import static lungfish.roomfile.Ranges.TEMPERATURE_K;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.OutletId;

/** Blowers and pumps: where they stand, what is fitted to them, what they feed. */
final class BlowerFormat {
    private BlowerFormat() {}

    static Blower read(Fields in) {
        return new Blower(
                new BlowerId(in.id("id")),
                in.text("name"),
                in.word("role", Blower.Role.class),
                in.maybeId("machine"),
                in.required("count").whole(1, MOST_MACHINES),
                in.object("siting", BlowerFormat::readSiting),
                in.maybeObject("fittings", BlowerFormat::readFittings).orElse(Blower.Fittings.UNKNOWN),
                in.maybeObject("bleed", BlowerFormat::readBleed).orElse(new Blower.Unsaid()),
                in.maybeId("circuit").map(CircuitId::new),
                in.maybeNumber("age_s", AGE_S),
                in.optional("serves").map(BlowerFormat::readServes).orElse(List.of()),
                in.maybeObject("feeds", PointFormat::readOnRun));
    }

    static void write(JsonWriter out, Blower blower) {
        out.text("id", blower.id().text())
                .text("name", blower.name())
                .word("role", blower.role())
                .maybeText("machine", blower.machine())
                .whole("count", blower.count())
                .object("siting", inner -> writeSiting(inner, blower.siting()));
        if (!blower.fittings().equals(Blower.Fittings.UNKNOWN)) {
            out.object("fittings", inner -> writeFittings(inner, blower.fittings()));
        }
        writeBleed(out, blower.bleed());
        out.maybeText("circuit", blower.circuit().map(CircuitId::text))
                .maybeNumber("age_s", blower.ageS())
                .maybeTexts(
                        "serves", blower.serves().stream().map(OutletId::text).toList())
                .maybeFlatObject("feeds", blower.feeds(), PointFormat::writeOnRun);
    }

    private static List<OutletId> readServes(At serves) {
        return serves.list(at -> new OutletId(at.id()));
    }

    private static Blower.Siting readSiting(Fields in) {
        return new Blower.Siting(
                in.maybeObject("place", PointFormat::read),
                in.required("outside").truth(),
                in.maybeNumber("wall_db", LEVEL_DB),
                in.maybeNumber("intake_temperature_k", TEMPERATURE_K));
    }

    private static void writeSiting(JsonWriter out, Blower.Siting siting) {
        out.maybeFlatObject("place", siting.place(), PointFormat::write)
                .truth("outside", siting.outside())
                .maybeNumber("wall_db", siting.wallDb())
                .maybeNumber("intake_temperature_k", siting.intakeTemperatureK());
    }

    private static Blower.Fittings readFittings(Fields in) {
        return new Blower.Fittings(
                in.maybeId("inlet_filter"),
                in.maybeId("silencer"),
                in.maybeNumber("hose_length_m", HEIGHT_M),
                in.maybeNumber("port_bore_m", BORE_M),
                in.maybeNumber("relief_gauge_pa", GAUGE_PA));
    }

    private static void writeFittings(JsonWriter out, Blower.Fittings fittings) {
        out.maybeText("inlet_filter", fittings.inletFilter())
                .maybeText("silencer", fittings.silencer())
                .maybeNumber("hose_length_m", fittings.hoseM())
                .maybeNumber("port_bore_m", fittings.portM())
                .maybeNumber("relief_gauge_pa", fittings.reliefPa());
    }

    private static Blower.Bleed readBleed(Fields in) {
        return in.oneOf(
                "kind",
                Map.<String, Function<Fields, Blower.Bleed>>of(
                        "unbled", fields -> new Blower.Unbled(),
                        "bled", fields -> new Blower.BledTo(fields.maybeNumber("gauge_pa", GAUGE_PA))),
                new Blower.Unsaid());
    }

    private static void writeBleed(JsonWriter out, Blower.Bleed bleed) {
        if (bleed instanceof Blower.Unbled) {
            out.flatObject("bleed", inner -> inner.text("kind", "unbled"));
        } else if (bleed instanceof Blower.BledTo bled) {
            out.flatObject("bleed", inner -> inner.text("kind", "bled").maybeNumber("gauge_pa", bled.gaugePa()));
        }
    }
}
