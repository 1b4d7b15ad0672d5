package lungfish.roomfile;

import static lungfish.roomfile.Ranges.ALONG_SHELF_M;
import static lungfish.roomfile.Ranges.FISH_KG;
import static lungfish.roomfile.Ranges.FOOD_KG;
import static lungfish.roomfile.Ranges.MOST_FISH;
import static lungfish.roomfile.Ranges.SALINITY;
import static lungfish.roomfile.Ranges.SECONDS;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.SPAN_M;
import static lungfish.roomfile.Ranges.TEMPERATURE_K;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Tanks, cones and tumblers, and who lives in them. */
final class TankFormat {
    private TankFormat() {}

    static Tank read(Fields in) {
        return new Tank(
                new TankId(in.id("id")),
                in.text("name"),
                in.word("kind", Tank.Kind.class),
                in.number("x_m", ALONG_SHELF_M),
                new Tank.Size(
                        in.number("length_m", SPAN_M), in.number("width_m", SPAN_M), in.number("height_m", SPAN_M)),
                in.number("water_depth_m", SPAN_M),
                in.maybeNumber("temperature_k", TEMPERATURE_K),
                in.maybeNumber("salinity_kg_per_kg", SALINITY),
                in.maybeNumber("survival_s", SECONDS),
                in.maybeObjects("fish", TankFormat::readFish),
                in.maybeObject("feeding", TankFormat::readFeeding),
                in.maybeTruth("just_fed"),
                in.maybeObjects("outlets", OutletFormat::read));
    }

    static void write(JsonWriter out, Tank tank) {
        out.text("id", tank.id().text())
                .text("name", tank.name())
                .word("kind", tank.kind())
                .number("x_m", tank.xM())
                .number("length_m", tank.outside().lengthM())
                .number("width_m", tank.outside().widthM())
                .number("height_m", tank.outside().heightM())
                .number("water_depth_m", tank.waterDepthM())
                .maybeNumber("temperature_k", tank.temperatureK())
                .maybeNumber("salinity_kg_per_kg", tank.salinityKgPerKg())
                .maybeNumber("survival_s", tank.survivalS())
                .maybeFlatObjects("fish", tank.fish(), TankFormat::writeFish)
                .maybeFlatObject("feeding", tank.feeding(), TankFormat::writeFeeding)
                .maybeTruth("just_fed", tank.justFed())
                .maybeObjects("outlets", tank.outlets(), OutletFormat::write);
    }

    private static Tank.Fish readFish(Fields in) {
        return new Tank.Fish(
                in.text("name"), in.required("count").whole(1, MOST_FISH), in.number("mass_each_kg", FISH_KG));
    }

    private static void writeFish(JsonWriter out, Tank.Fish fish) {
        out.text("name", fish.name()).whole("count", fish.count()).number("mass_each_kg", fish.massKg());
    }

    private static Tank.Feeding readFeeding(Fields in) {
        return new Tank.Feeding(in.number("food_kg_per_day", FOOD_KG), in.maybeNumber("protein", SHARE));
    }

    private static void writeFeeding(JsonWriter out, Tank.Feeding feeding) {
        out.number("food_kg_per_day", feeding.kgPerDay()).maybeNumber("protein", feeding.protein());
    }
}
