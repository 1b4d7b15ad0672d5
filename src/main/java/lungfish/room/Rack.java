package lungfish.room;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A rack of shelves.
 *
 * @param xM its first corner, along the room's length
 * @param yM its first corner, along the room's width
 * @param turn how it stands
 * @param widthM along its front
 * @param depthM from front to back
 * @param stage in place, or planned
 * @param shelves from the bottom up
 */
public record Rack(
        RackId id,
        String name,
        Stage stage,
        double xM,
        double yM,
        Turn turn,
        double widthM,
        double depthM,
        OptionalDouble ownMassKg,
        List<Shelf> shelves) {
    /** Whether it stands there or is thought of. */
    public enum Stage {
        IN_PLACE,
        PLANNED
    }

    /** Which way the front looks, as quarter turns from "front along x, looking towards larger y". */
    public enum Turn {
        NONE,
        QUARTER,
        HALF,
        THREE_QUARTERS
    }

    public Rack {
        shelves = List.copyOf(shelves);
    }

    public boolean isPlanned() {
        return stage == Stage.PLANNED;
    }

    public Stream<Tank> tanks() {
        return shelves.stream().flatMap(shelf -> shelf.tanks().stream());
    }
}
