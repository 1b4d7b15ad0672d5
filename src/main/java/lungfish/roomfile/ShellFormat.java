package lungfish.roomfile;

import static lungfish.roomfile.Ranges.PLACE_M;
import static lungfish.roomfile.Ranges.SHARE;
import static lungfish.roomfile.Ranges.SPAN_M;

import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.room.Shell;

/** The room as a box, its doors and inner walls. */
final class ShellFormat {
    private ShellFormat() {}

    static Shell read(Fields in) {
        return new Shell(
                in.number("length_m", SPAN_M),
                in.number("width_m", SPAN_M),
                in.number("height_m", SPAN_M),
                in.maybeNumber("absorption", SHARE),
                in.maybeObjects("doors", ShellFormat::readDoor),
                in.maybeObjects("walls", ShellFormat::readWall));
    }

    static void write(JsonWriter out, Shell shell) {
        out.number("length_m", shell.lengthM())
                .number("width_m", shell.widthM())
                .number("height_m", shell.heightM())
                .maybeNumber("absorption", shell.absorption())
                .maybeFlatObjects("doors", shell.doors(), ShellFormat::writeDoor)
                .maybeFlatObjects("walls", shell.walls(), ShellFormat::writeWall);
    }

    private static Shell.Door readDoor(Fields in) {
        return new Shell.Door(in.number("x_m", PLACE_M), in.number("y_m", PLACE_M), in.number("width_m", SPAN_M));
    }

    private static void writeDoor(JsonWriter out, Shell.Door door) {
        out.number("x_m", door.xM()).number("y_m", door.yM()).number("width_m", door.widthM());
    }

    private static Shell.Wall readWall(Fields in) {
        return new Shell.Wall(
                in.number("from_x_m", PLACE_M),
                in.number("from_y_m", PLACE_M),
                in.number("to_x_m", PLACE_M),
                in.number("to_y_m", PLACE_M),
                in.maybeText("build"));
    }

    private static void writeWall(JsonWriter out, Shell.Wall wall) {
        out.number("from_x_m", wall.fromXM())
                .number("from_y_m", wall.fromYM())
                .number("to_x_m", wall.toXM())
                .number("to_y_m", wall.toYM())
                .maybeText("build", wall.build());
    }
}
