package lungfish.desk;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Supplier;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.plan.Planner;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;
import lungfish.roomfile.RoomReader;

/**
 * What all desks of the program share, one desk a window.
 *
 * @param preferences of the person
 * @param hands that do the work
 * @param autosaves the folder of the program for changes that cannot be kept beside a file
 * @param copied what one of them copies another can paste
 * @param today which day it is where the keeper is
 */
public record Desks(
        Catalogue catalogue,
        Preferences preferences,
        Hands hands,
        Path autosaves,
        Copied copied,
        Supplier<LocalDate> today) {
    /** The name of the file of preferences. */
    private static final String PREFERENCES = "preferences.properties";

    private static final String AUTOSAVES = "autosave";

    /** With the catalogue that came with the program, and preferences in this folder. */
    public static Desks in(Path configFolder, Hands hands) {
        return new Desks(
                CatalogueFiles.load(),
                new Preferences(configFolder.resolve(PREFERENCES), hands.disk()),
                hands,
                configFolder.resolve(AUTOSAVES),
                new Copied(),
                () -> LocalDate.now(ZoneId.systemDefault()));
    }

    /** The same on a day that stays: what is shown of a log is the same whenever it is asked for. */
    public Desks on(LocalDate day) {
        return new Desks(catalogue, preferences, hands, autosaves, copied, () -> day);
    }

    /** A new desk with a demo room on it. */
    public Desk withDemo(String name) {
        return with("Open " + name, demo(name));
    }

    /**
     * A new desk with a room on it that has no file.
     *
     * @param done how the room came here
     */
    public Desk with(String done, Room room) {
        return new Desk(this, new Planner(catalogue)::plan, done, room);
    }

    Rescue rescue() {
        return new Rescue(catalogue, autosaves);
    }

    Room demo(String name) {
        return new RoomReader(catalogue).read(DemoRooms.bytes(name)).orThrow();
    }
}
