package lungfish.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.catalogue.Catalogue;
import lungfish.piping.PipedRoom;
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
        return basis(room, OptionalDouble.empty());
    }

    /**
     * The same, with more nodes along the pipe.
     *
     * @param everyM no piece of a run is longer; absent: cut only where something leaves or joins
     */
    public Optional<Basis> basis(Room room, OptionalDouble everyM) {
        Setup setup = Setup.of(room, catalogue);
        return Piping.of(room, setup.demand(), setup.planned(), catalogue, everyM)
                .flatMap(piped -> Basis.of(setup, piped, refused -> {}));
    }

    /**
     * The network of a room, not solved yet.
     *
     * @return empty without a pipe or outlets
     */
    public Optional<PipedRoom> piped(Room room) {
        return piped(Setup.of(room, catalogue));
    }

    private Optional<PipedRoom> piped(Setup setup) {
        return Piping.of(setup.room(), setup.demand(), setup.planned(), catalogue);
    }

    /** What a room's pipe costs; known without solving it. */
    public PipePrice pipePrice(Room room) {
        return PipePrice.of(Setup.of(room, catalogue));
    }

    public Catalogue catalogue() {
        return catalogue;
    }
}
