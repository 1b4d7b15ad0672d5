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
}
