package lungfish.roomfile;

import java.util.Optional;
import lungfish.json.At;
import lungfish.json.Fields;
import lungfish.json.JsonWriter;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Backup;
import lungfish.room.Building;
import lungfish.room.Climate;
import lungfish.room.Log;
import lungfish.room.OwnClasses;
import lungfish.room.Room;
import lungfish.room.Spreads;
import lungfish.room.Supply;
import lungfish.room.Wishes;

/** The whole file. */
final class RoomFormat {
    /** What the file says it is. */
    static final String FORMAT = "lungfish-room";

    /** The version that is written, and the newest that is read. */
    static final int VERSION = 1;

    private static final int NEWEST_IMAGINABLE = 1_000_000;

    private RoomFormat() {}

    /** The room; empty where the file is not for us to read, which was told then. */
    static Optional<Room> read(Fields in) {
        if (isOurs(in) && isNotNewer(in)) {
            return Optional.of(readRoom(in));
        }
        in.forgiveTheRest();
        return Optional.empty();
    }

    private static boolean isOurs(Fields in) {
        String format = in.required("format").text();
        boolean other = !format.isEmpty() && !format.equals(FORMAT);
        if (other) {
            in.problem("format", "found \"" + format + "\", so this is no room file", '"' + FORMAT + '"');
        }
        return !other;
    }

    private static boolean isNotNewer(Fields in) {
        int version = in.required("version").whole(1, NEWEST_IMAGINABLE);
        if (version > VERSION) {
            in.problem(
                    "version",
                    "this file has version " + version + ", made by a newer program; it was left as it is",
                    "version " + VERSION + " or older, or a newer program to open it with");
        }
        return version <= VERSION;
    }

    private static Room readRoom(Fields in) {
        return new Room(
                in.text("name"),
                in.optional("notes").map(At::prose),
                in.word("display_units", DisplayUnits.class),
                in.object("shell", ShellFormat::read),
                in.maybeObject("climate", SettingFormat::readClimate).orElse(Climate.UNKNOWN),
                in.maybeObject("supply", SettingFormat::readSupply).orElse(Supply.UNKNOWN),
                in.maybeObject("wishes", WishesFormat::read).orElse(Wishes.NONE),
                in.maybeObject("listener", SettingFormat::readListener),
                in.maybeObjects("circuits", SettingFormat::readCircuit),
                in.maybeObjects("racks", RackFormat::read),
                in.maybeObjects("runs", RunFormat::read),
                in.maybeObjects("gangs", RunFormat::readGang),
                in.maybeObjects("blowers", BlowerFormat::read),
                in.maybeObject("backup", BackupFormat::read).orElse(Backup.NONE),
                in.maybeObjects("stirrers", BackupFormat::readStirrer),
                in.maybeObject("own_classes", RoomFormat::readOwn).orElse(OwnClasses.NONE),
                in.maybeObject("spreads", SpreadsFormat::read).orElse(Spreads.UNKNOWN),
                in.maybeObject("building", BuildingFormat::read).orElse(Building.UNKNOWN),
                in.maybeObject("log", LogFormat::read).orElse(Log.EMPTY));
    }

    static void write(JsonWriter out, Room room) {
        out.text("format", FORMAT)
                .whole("version", VERSION)
                .text("name", room.name())
                .maybeText("notes", room.notes())
                .word("display_units", room.displayUnits())
                .object("shell", inner -> ShellFormat.write(inner, room.shell()))
                .maybeObject("climate", unless(Climate.UNKNOWN, room.climate()), SettingFormat::writeClimate)
                .maybeObject("supply", unless(Supply.UNKNOWN, room.supply()), SettingFormat::writeSupply)
                .maybeObject("wishes", unless(Wishes.NONE, room.wishes()), WishesFormat::write)
                .maybeObject("listener", room.listener(), SettingFormat::writeListener)
                .maybeObjects("circuits", room.circuits(), SettingFormat::writeCircuit)
                .maybeObjects("racks", room.racks(), RackFormat::write)
                .maybeObjects("runs", room.runs(), RunFormat::write)
                .maybeObjects("gangs", room.gangs(), RunFormat::writeGang)
                .maybeObjects("blowers", room.blowers(), BlowerFormat::write)
                .maybeObject("backup", unless(Backup.NONE, room.backup()), BackupFormat::write)
                .maybeObjects("stirrers", room.stirrers(), BackupFormat::writeStirrer)
                .maybeObject("own_classes", unless(OwnClasses.NONE, room.ownClasses()), RoomFormat::writeOwn)
                .maybeObject("spreads", unless(Spreads.UNKNOWN, room.spreads()), SpreadsFormat::write)
                .maybeObject("building", unless(Building.UNKNOWN, room.building()), BuildingFormat::write)
                .maybeObject("log", unless(Log.EMPTY, room.log()), LogFormat::write);
    }

    /** What says nothing is not written. */
    private static <T> Optional<T> unless(T nothing, T value) {
        return value.equals(nothing) ? Optional.empty() : Optional.of(value);
    }

    private static OwnClasses readOwn(Fields in) {
        return new OwnClasses(
                in.maybeObjects("devices", OwnDeviceFormat::read), in.maybeObjects("blowers", OwnBlowerFormat::read));
    }

    private static void writeOwn(JsonWriter out, OwnClasses own) {
        out.maybeObjects("devices", own.devices(), OwnDeviceFormat::write)
                .maybeObjects("blowers", own.blowers(), OwnBlowerFormat::write);
    }
}
