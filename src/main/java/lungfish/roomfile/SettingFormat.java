package lungfish.roomfile;

import static lungfish.roomfile.Ranges.ALTITUDE_M;
import static lungfish.roomfile.Ranges.FREQUENCY_HZ;
import static lungfish.roomfile.Ranges.LEVEL_DB;
import static lungfish.roomfile.Ranges.PRICE_PER_J;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.TEMPERATURE_K;
import static lungfish.roomfile.Ranges.VOLTAGE_V;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Climate;
import lungfish.room.Listener;
import lungfish.room.Supply;

/** What the room is set in: its air, its mains power and circuits, and who hears it. */
final class SettingFormat {
    private SettingFormat() {}

    static Climate readClimate(Fields in) {
        return new Climate(
                in.maybeNumber("temperature_k", TEMPERATURE_K),
                in.maybeNumber("humidity", SHARE),
                in.maybeNumber("altitude_m", ALTITUDE_M),
                in.maybeNumber("coldest_pipe_k", TEMPERATURE_K));
    }

    static void writeClimate(JsonWriter out, Climate climate) {
        out.maybeNumber("temperature_k", climate.temperatureK())
                .maybeNumber("humidity", climate.humidity())
                .maybeNumber("altitude_m", climate.altitudeM())
                .maybeNumber("coldest_pipe_k", climate.coldestPipeK());
    }

    static Supply readSupply(Fields in) {
        return new Supply(
                in.maybeNumber("voltage_v", VOLTAGE_V),
                in.maybeNumber("frequency_hz", FREQUENCY_HZ),
                in.maybeNumber("price_per_j", PRICE_PER_J),
                in.maybeText("currency"));
    }

    static void writeSupply(JsonWriter out, Supply supply) {
        out.maybeNumber("voltage_v", supply.voltageV())
                .maybeNumber("frequency_hz", supply.frequencyHz())
                .maybeNumber("price_per_j", supply.pricePerJ())
                .maybeText("currency", supply.currency());
    }

    static Circuit readCircuit(Fields in) {
        return new Circuit(
                new CircuitId(in.id("id")),
                in.text("name"),
                in.maybeTruth("residual_current_protected"),
                in.maybeTruth("feeds_heaters"));
    }

    static void writeCircuit(JsonWriter out, Circuit circuit) {
        out.text("id", circuit.id().text())
                .text("name", circuit.name())
                .maybeTruth("residual_current_protected", circuit.residualCurrentProtected())
                .maybeTruth("feeds_heaters", circuit.feedsHeaters());
    }

    static Listener readListener(Fields in) {
        return new Listener(
                in.text("name"),
                in.object("place", PointFormat::read),
                in.maybeObject("behind", SettingFormat::readPartition));
    }

    static void writeListener(JsonWriter out, Listener listener) {
        out.text("name", listener.name())
                .flatObject("place", inner -> PointFormat.write(inner, listener.place()))
                .maybeObject("behind", listener.behind(), SettingFormat::writePartition);
    }

    private static Listener.Partition readPartition(Fields in) {
        return new Listener.Partition(in.text("name"), in.number("reduction_db", LEVEL_DB));
    }

    private static void writePartition(JsonWriter out, Listener.Partition partition) {
        out.text("name", partition.name()).number("reduction_db", partition.reductionDb());
    }
}
