package lungfish.roomfile;

import static lungfish.roomfile.Ranges.GAUGE_PA;
import static lungfish.roomfile.Ranges.JAR_M3;
import static lungfish.roomfile.Ranges.LEVEL_DB;
import static lungfish.roomfile.Ranges.NO_GAUGE_PA;
import static lungfish.roomfile.Ranges.POWER_W;
import static lungfish.roomfile.Ranges.SECONDS;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.BlowerId;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.ReadingId;

/** What the keeper read. */
final class ReadingFormat {
    private static final Reading.Measured NONE = new Reading.Level(0);

    private ReadingFormat() {}

    static Reading read(Fields in) {
        return new Reading(
                new ReadingId(in.id("id")),
                LogFormat.day(in, "on"),
                in.object("read", ReadingFormat::readMeasured),
                in.maybeObject("shut", ReadingFormat::readShut).orElse(Reading.Shut.NOTHING),
                in.maybeText("note"));
    }

    static void write(JsonWriter out, Reading reading) {
        out.text("id", reading.id().text())
                .text("on", reading.on().toString())
                .object("read", inner -> writeMeasured(inner, reading.measured()))
                .maybeObject(
                        "shut",
                        Optional.of(reading.shut()).filter(shut -> !shut.equals(Reading.Shut.NOTHING)),
                        ReadingFormat::writeShut)
                .maybeText("note", reading.note());
    }

    private static Reading.Measured readMeasured(Fields in) {
        return in.oneOf(
                "kind",
                Map.<String, Function<Fields, Reading.Measured>>of(
                        "jar", ReadingFormat::readJar,
                        "gauge", ReadingFormat::readGauge,
                        "watts", ReadingFormat::readWatts,
                        "level", fields -> new Reading.Level(fields.number("level_dba", LEVEL_DB)),
                        "fall", ReadingFormat::readFall),
                NONE);
    }

    private static void writeMeasured(JsonWriter out, Reading.Measured measured) {
        if (measured instanceof Reading.Jar jar) {
            out.text("kind", "jar")
                    .text("outlet", jar.outlet().text())
                    .number("seconds_s", jar.s())
                    .maybeNumber("jar_m3", jar.jarM3());
        } else if (measured instanceof Reading.Gauge gauge) {
            out.text("kind", "gauge")
                    .maybeFlatObject("at", gauge.at(), PointFormat::writeOnRun)
                    .number("gauge_pa", gauge.gaugePa());
        } else if (measured instanceof Reading.Watts watts) {
            out.text("kind", "watts")
                    .maybeText("blower", watts.blower().map(BlowerId::text))
                    .number("drawn_w", watts.watts());
        } else if (measured instanceof Reading.Level level) {
            out.text("kind", "level").number("level_dba", level.dba());
        } else if (measured instanceof Reading.Fall fall) {
            out.text("kind", "fall")
                    .number("from_pa", fall.fromPa())
                    .number("to_pa", fall.toPa())
                    .number("seconds_s", fall.s());
        }
    }

    private static Reading.Jar readJar(Fields in) {
        OptionalDouble jarM3 = in.maybeNumber("jar_m3", JAR_M3);
        return new Reading.Jar(new OutletId(in.id("outlet")), in.number("seconds_s", SECONDS), jarM3);
    }

    private static Reading.Gauge readGauge(Fields in) {
        return new Reading.Gauge(in.maybeObject("at", PointFormat::readOnRun), in.number("gauge_pa", NO_GAUGE_PA));
    }

    private static Reading.Watts readWatts(Fields in) {
        return new Reading.Watts(in.maybeId("blower").map(BlowerId::new), in.number("drawn_w", POWER_W));
    }

    private static Reading.Fall readFall(Fields in) {
        return new Reading.Fall(
                in.number("from_pa", GAUGE_PA), in.number("to_pa", NO_GAUGE_PA), in.number("seconds_s", SECONDS));
    }

    private static Reading.Shut readShut(Fields in) {
        return new Reading.Shut(LogFormat.outlets(in), in.maybeObjects("valves", PointFormat::readOnRun));
    }

    private static void writeShut(JsonWriter out, Reading.Shut shut) {
        out.maybeTexts("outlets", LogFormat.texts(shut.outlets()))
                .maybeFlatObjects("valves", shut.valves(), PointFormat::writeOnRun);
    }
}
