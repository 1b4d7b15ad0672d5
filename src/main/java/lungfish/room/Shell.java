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
    /** A pipe in the thickness of a wall or ceiling is still drawn in the room. */
    public static final double WALL_M = 0.3;

    /** As far as a next room or an attic may be. */
    public static final double NEXT_ROOM_M = 30;

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

    /** The same walls and doors around another box. */
    public Shell sized(double length, double width, double height) {
        return new Shell(length, width, height, absorption, doors, walls);
    }

    /** The same room whose surfaces take up this share of the sound; empty: unknown. */
    public Shell absorbing(OptionalDouble that) {
        return new Shell(lengthM, widthM, heightM, that, doors, walls);
    }

    /** The same room with these doors for all of its own. */
    public Shell withDoors(List<Door> those) {
        return new Shell(lengthM, widthM, heightM, absorption, those, walls);
    }

    /** The same room with these inner walls for all of its own. */
    public Shell withWalls(List<Wall> those) {
        return new Shell(lengthM, widthM, heightM, absorption, doors, those);
    }
}
