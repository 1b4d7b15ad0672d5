package lungfish.room;

/**
 * A place in the room.
 *
 * @param xM metres along the room's length from its first corner
 * @param yM metres along its width
 * @param zM metres above the floor
 */
public record Point(double xM, double yM, double zM) {
    /** The straight distance to another point, in metres. */
    public double distanceM(Point other) {
        return Math.sqrt(square(xM - other.xM) + square(yM - other.yM) + square(zM - other.zM));
    }

    /** The point at {@code share} (0 to 1) of the way to another. */
    public Point towards(Point other, double share) {
        return new Point(xM + share * (other.xM - xM), yM + share * (other.yM - yM), zM + share * (other.zM - zM));
    }

    private static double square(double x) {
        return x * x;
    }
}
