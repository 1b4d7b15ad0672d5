package lungfish.room;

import java.util.Optional;

/** Where the keeper sits and hears, inside the room or behind a wall of it. */
public record Listener(String name, Point place, Optional<Partition> behind) {
    /** The same listener, elsewhere. */
    public Listener at(Point that) {
        return new Listener(name, that, behind);
    }

    /**
     * What stands between the machines and the ear.
     *
     * @param reductionDb its single-number rating
     */
    public record Partition(String name, double reductionDb) {}
}
