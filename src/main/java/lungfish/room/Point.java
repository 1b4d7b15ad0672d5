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

    /** Where on the way from one point to another (0 to 1) the nearest place to this point is. */
    public double footShare(Point from, Point to) {
        double dx = to.xM - from.xM;
        double dy = to.yM - from.yM;
        double dz = to.zM - from.zM;
        double squared = dx * dx + dy * dy + dz * dz;
        if (squared == 0) {
            return 0;
        }
        double dot = (xM - from.xM) * dx + (yM - from.yM) * dy + (zM - from.zM) * dz;
        return Math.min(1, Math.max(0, dot / squared));
    }

    /** This point, moved. */
    public Point moved(double dxM, double dyM, double dzM) {
        return new Point(xM + dxM, yM + dyM, zM + dzM);
    }

    private static double square(double x) {
        return x * x;
    }
}
