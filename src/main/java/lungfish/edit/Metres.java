package lungfish.edit;

import lungfish.room.Point;
import lungfish.room.Tank;

/** Sums of lengths, kept clean: a hundredth of a millimetre holds every step of either system, and a diff reads well. */
final class Metres {
    private static final double PER_M = 1e5;

    private Metres() {}

    static double clean(double lengthM) {
        return Math.rint(lengthM * PER_M) / PER_M;
    }

    static Tank.Size clean(Tank.Size size) {
        return new Tank.Size(clean(size.lengthM()), clean(size.widthM()), clean(size.heightM()));
    }

    static Point clean(Point point) {
        return new Point(clean(point.xM()), clean(point.yM()), clean(point.zM()));
    }
}
