package lungfish.room;

import java.util.List;

/**
 * A shelf.
 *
 * @param heightM of its surface above the floor
 * @param tanks from left to right, seen from the front
 */
public record Shelf(ShelfId id, double heightM, List<Tank> tanks) {
    public Shelf {
        tanks = List.copyOf(tanks);
    }

    /** The same shelf with these tanks for all of its own. */
    public Shelf withTanks(List<Tank> those) {
        return new Shelf(id, heightM, those);
    }

    /** The same shelf, its surface this high above the floor. */
    public Shelf atHeightM(double that) {
        return new Shelf(id, that, tanks);
    }
}
