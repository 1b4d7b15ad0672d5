package lungfish.roomfile;

import static lungfish.roomfile.Ranges.HEIGHT_M;
import static lungfish.roomfile.Ranges.PLACE_M;
import static lungfish.roomfile.Ranges.RACK_KG;
import static lungfish.roomfile.Ranges.SPAN_M;

import java.util.OptionalInt;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Step;

/** Racks and their shelves. */
final class RackFormat {
    private RackFormat() {}

    static Rack read(Fields in) {
        return new Rack(
                new RackId(in.id("id")),
                in.text("name"),
                in.word("stage", Rack.Stage.class),
                readStep(in),
                in.number("x_m", PLACE_M),
                in.number("y_m", PLACE_M),
                in.word("turn", Rack.Turn.class),
                in.number("width_m", SPAN_M),
                in.number("depth_m", SPAN_M),
                in.maybeNumber("own_mass_kg", RACK_KG),
                in.maybeObjects("shelves", RackFormat::readShelf));
    }

    private static Step readStep(Fields in) {
        OptionalInt number = in.optional("step").map(at -> at.whole(1, Step.LAST)).stream()
                .mapToInt(Integer::intValue)
                .findFirst();
        return new Step(number, in.maybeText("step_name"));
    }

    static void write(JsonWriter out, Rack rack) {
        out.text("id", rack.id().text()).text("name", rack.name()).word("stage", rack.stage());
        rack.step().said().ifPresent(number -> out.whole("step", number));
        out.maybeText("step_name", rack.step().name())
                .number("x_m", rack.xM())
                .number("y_m", rack.yM())
                .word("turn", rack.turn())
                .number("width_m", rack.widthM())
                .number("depth_m", rack.depthM())
                .maybeNumber("own_mass_kg", rack.ownMassKg())
                .maybeObjects("shelves", rack.shelves(), RackFormat::writeShelf);
    }

    private static Shelf readShelf(Fields in) {
        return new Shelf(
                new ShelfId(in.id("id")), in.number("height_m", HEIGHT_M), in.maybeObjects("tanks", TankFormat::read));
    }

    private static void writeShelf(JsonWriter out, Shelf shelf) {
        out.text("id", shelf.id().text())
                .number("height_m", shelf.heightM())
                .maybeObjects("tanks", shelf.tanks(), TankFormat::write);
    }
}
