package lungfish.blower;

import java.util.Optional;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.room.Blower;
import lungfish.room.Classes;
import lungfish.room.Room;

/** Turns the blowers of a room into machines. */
public final class Machines {
    private Machines() {}

    /** The machine that a blower names; empty where it leaves the choice to the plan. */
    public static Optional<Machine> chosen(Blower blower, Room room, Catalogue catalogue) {
        return blower.machine()
                .map(id -> new Classes(room.ownClasses(), catalogue)
                        .blower(id)
                        .orElseThrow(() -> new IllegalArgumentException("no blower class '" + id + "'")))
                .map(kind -> as(kind, blower, catalogue));
    }

    /** A class in the place of a blower of the room, with all that is fitted there. */
    public static Machine as(BlowerClass kind, Blower blower, Catalogue catalogue) {
        return new Machine(
                kind.name(),
                blower.id().part(),
                kind,
                blower.count(),
                Accessories.of(blower, catalogue),
                blower.siting().intakeTemperatureK());
    }
}
