package lungfish.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The room itself: a box of walls seen from above, x along its length, y along its width.
 *
 * @param absorption mean sound absorption of its surfaces, 0 to 1
 * @param doors openings in the walls
 */
public record Shell(
        double lengthM, double widthM, double heightM, OptionalDouble absorption, List<Door> doors, List<Wall> walls) {
    public Shell {
        doors = List.copyOf(doors);
        walls = List.copyOf(walls);
    }

    /**
     * A door, in the wall that its point stands on.
     *
     * @param xM its nearer edge
     * @param yM its nearer edge
     */
    public record Door(double xM, double yM, double widthM) {}

    /** An inner wall, seen from above. */
    public record Wall(double fromXM, double fromYM, double toXM, double toYM, Optional<String> build) {}
}
