package lungfish.roomfile;

import static lungfish.roomfile.Ranges.ALONG_RUN_M;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.TEMPERATURE_K;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Run;
import lungfish.room.RunId;

/** Runs of pipe with their fittings, and gangs. */
final class RunFormat {
    private RunFormat() {}

    static Run read(Fields in) {
        return new Run(
                new RunId(in.id("id")),
                in.text("name"),
                in.word("role", Run.Role.class),
                in.id("size"),
                in.required("closed").truth(),
                in.objects("points", PointFormat::read),
                in.maybeObjects("fittings", RunFormat::readFitting),
                in.maybeNumber("surroundings_temperature_k", TEMPERATURE_K));
    }

    static void write(JsonWriter out, Run run) {
        out.text("id", run.id().text())
                .text("name", run.name())
                .word("role", run.role())
                .text("size", run.size())
                .truth("closed", run.closed())
                .flatObjects("points", run.points(), PointFormat::write)
                .maybeFlatObjects("fittings", run.fittings(), RunFormat::writeFitting)
                .maybeNumber("surroundings_temperature_k", run.surroundingsK());
    }

    private static Run.Fitting readFitting(Fields in) {
        return new Run.Fitting(in.id("kind"), in.number("at_m", ALONG_RUN_M), in.maybeNumber("opening", SHARE));
    }

    private static void writeFitting(JsonWriter out, Run.Fitting fitting) {
        out.text("kind", fitting.kind()).number("at_m", fitting.atM()).maybeNumber("opening", fitting.opening());
    }

    static Gang readGang(Fields in) {
        return new Gang(
                new GangId(in.id("id")),
                in.word("kind", Gang.Kind.class),
                in.object("place", PointFormat::read),
                in.maybeObject("tap", PointFormat::readOnRun),
                in.maybeObject("feeder", OutletFormat::readAirline));
    }

    static void writeGang(JsonWriter out, Gang gang) {
        out.text("id", gang.id().text())
                .word("kind", gang.kind())
                .flatObject("place", inner -> PointFormat.write(inner, gang.place()))
                .maybeFlatObject("tap", gang.tap(), PointFormat::writeOnRun)
                .maybeFlatObject("feeder", gang.feeder(), OutletFormat::writeAirline);
    }
}
