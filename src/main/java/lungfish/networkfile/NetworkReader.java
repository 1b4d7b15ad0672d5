package lungfish.networkfile;

import java.util.List;
import java.util.Optional;
import lungfish.air.Atmosphere;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.JsonReader;
import lungfish.json.Range;
import lungfish.json.Reading;
import lungfish.network.Conditions;
import lungfish.network.Network;

/**
 * Reads a network file, or tells everything that is wrong with it: unknown and doubled keys, dangling names, doubled
 * ids, numbers that are out of range or not finite, curves that turn.
 */
public final class NetworkReader {
    /** What a file calls its format. */
    public static final String FORMAT = "air-network-1";

    /** Altitudes for which ISO 2533 gives this formula, m. */
    private static final Range ALTITUDES = Range.between(-1000.0, 11_000.0);

    private static final Network NOTHING =
            new Network(Conditions.usual(), List.of(), List.of(), List.of(), List.of(), Optional.empty());

    private NetworkReader() {}

    /** Reads the bytes of a file. */
    public static Reading<Network> read(byte[] bytes) {
        return JsonReader.read(bytes, at -> at.object(NetworkReader::network));
    }

    /** Reads a text. */
    public static Reading<Network> read(String text) {
        return JsonReader.read(text, at -> at.object(NetworkReader::network));
    }

    private static Network network(Fields fields) {
        At format = fields.required("format");
        String written = format.text();
        if (!written.equals(FORMAT)) {
            if (!written.isEmpty()) {
                format.problem("found \"" + written + '"', '"' + FORMAT + '"');
            }
            fields.forgiveTheRest();
            return NOTHING;
        }
        Optional<String> title = fields.maybeText("title");
        Conditions conditions = conditions(fields);
        Names nodes = Names.of(fields.required("nodes"), "node");
        PartReader parts = new PartReader(conditions, nodes);
        Names pipeIds = new Names("pipe");
        Names dropIds = new Names("drop");
        Names sourceIds = new Names("source");
        return new Network(
                conditions,
                nodes.all(),
                Parts.present(fields.objects("pipes", each -> parts.pipe(each, pipeIds))),
                Parts.present(fields.objects("drops", each -> parts.drop(each, dropIds))),
                Parts.present(fields.objects("sources", each -> parts.source(each, sourceIds))),
                title);
    }

    private static Conditions conditions(Fields fields) {
        Conditions usual = Conditions.usual();
        Conditions room = fields.maybeObject("room", each -> room(each, usual)).orElse(usual);
        Conditions wet = fields.maybeObject("water", each -> water(each, room)).orElse(room);
        return fields.maybeObject("conventions", each -> conventions(each, wet)).orElse(wet);
    }

    private static Conditions room(Fields room, Conditions usual) {
        double altitude = room.numberOr("altitude_m", ALTITUDES, 0.0);
        double ambient = room.numberOr("ambient_pa", Range.POSITIVE, Atmosphere.pressurePa(altitude));
        if (room.has("altitude_m") && room.has("ambient_pa")) {
            room.problem("ambient_pa", "the altitude is given too", "one of altitude_m and ambient_pa");
        }
        double temperature = room.numberOr("temperature_k", Range.POSITIVE, usual.roomTemperatureK());
        double inPipe = room.numberOr("pipe_temperature_k", Range.POSITIVE, temperature);
        Optional<Conditions> read = Parts.made(
                () -> new Conditions(
                        ambient,
                        temperature,
                        inPipe,
                        usual.waterDensityKgPerM3(),
                        usual.gravityMPerS2(),
                        usual.logTerm(),
                        usual.servedBand()),
                ambient,
                temperature,
                inPipe);
        return read.orElse(usual);
    }

    private static Conditions water(Fields water, Conditions room) {
        double density = water.numberOr("density_kg_m3", Range.POSITIVE, room.waterDensityKgPerM3());
        double gravity = water.numberOr("g", Range.NOT_NEGATIVE, room.gravityMPerS2());
        Optional<Conditions> read = Parts.made(
                () -> new Conditions(
                        room.ambientPa(),
                        room.roomTemperatureK(),
                        room.pipeTemperatureK(),
                        density,
                        gravity,
                        room.logTerm(),
                        room.servedBand()),
                density,
                gravity);
        return read.orElse(room);
    }

    private static Conditions conventions(Fields conventions, Conditions wet) {
        boolean logTerm = conventions.maybeTruth("log_term").orElse(wet.logTerm());
        double band = conventions.numberOr("served_band", Range.SHARE, wet.servedBand());
        Optional<Conditions> read = Parts.made(
                () -> new Conditions(
                        wet.ambientPa(),
                        wet.roomTemperatureK(),
                        wet.pipeTemperatureK(),
                        wet.waterDensityKgPerM3(),
                        wet.gravityMPerS2(),
                        logTerm,
                        band),
                band);
        return read.orElse(wet);
    }
}
