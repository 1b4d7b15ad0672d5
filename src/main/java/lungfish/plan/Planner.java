package lungfish.plan;

import java.util.Optional;
import lungfish.catalogue.Catalogue;
import lungfish.piping.Piping;
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

    /**
     * What choosing in a room rests on; much less work than its plan.
     *
     * @return empty without a pipe or outlets, and where the network cannot be solved: the plan's findings say why
     * @throws IllegalArgumentException when the room names a class that is nowhere, which its reader rules out
     */
    public Optional<Basis> basis(Room room) {
        Setup setup = Setup.of(room, catalogue);
        return Piping.of(room, setup.demand(), setup.planned(), catalogue)
                .flatMap(piped -> Basis.of(setup, piped, refused -> {}));
    }
}
