package lungfish.plan;

import lungfish.catalogue.Catalogue;
import lungfish.room.Room;

/** Plans a room: everything that is live, once, as one immutable answer. Pure: the same room gives the same plan. */
public final class Planner {
    private final Catalogue catalogue;

    public Planner(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * The plan of a room.
     *
     * @throws IllegalArgumentException when the room names a class that is nowhere, which its reader rules out
     */
    public Plan plan(Room room) {
        return new Planning(Setup.of(room, catalogue)).plan();
    }
}
