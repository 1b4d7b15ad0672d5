package lungfish.edit;

import java.util.List;
import lungfish.room.Point;
import lungfish.room.Room;
import lungfish.room.Run;

/** Whether a thing on the floor lies within a rectangle, or touches it. */
final class Marquee {
    private Marquee() {}

    static boolean holds(Room room, Part part, Box box) {
        return switch (part.kind()) {
            case RACK ->
                Find.rack(room, part.id())
                        .filter(rack -> box.holds(Box.of(rack)))
                        .isPresent();
            case RUN ->
                Find.run(room, part.id())
                        .filter(run -> run.points().stream().allMatch(point -> isIn(point, box)))
                        .isPresent();
            default ->
                Places.point(room, part).filter(point -> isIn(point, box)).isPresent();
        };
    }

    static boolean touches(Room room, Part part, Box box) {
        return switch (part.kind()) {
            case RACK ->
                Find.rack(room, part.id())
                        .filter(rack -> box.touches(Box.of(rack)))
                        .isPresent();
            case RUN ->
                Find.run(room, part.id()).filter(run -> touches(run, box)).isPresent();
            default -> holds(room, part, box);
        };
    }

    private static boolean isIn(Point point, Box box) {
        return box.touches(new Box(point.xM(), point.yM(), point.xM(), point.yM()));
    }

    private static boolean touches(Run run, Box box) {
        List<Point> corners = run.corners();
        for (int i = 1; i < corners.size(); i++) {
            if (crosses(corners.get(i - 1), corners.get(i), box)) {
                return true;
            }
        }
        return false;
    }

    /** Whether some of the way between two points is in the box: what is left of it after each side has cut its part off. */
    private static boolean crosses(Point from, Point to, Box box) {
        double dx = to.xM() - from.xM();
        double dy = to.yM() - from.yM();
        double[] left = {0, 1};
        return cut(left, dx, from.xM(), box.fromXM(), box.toXM()) && cut(left, dy, from.yM(), box.fromYM(), box.toYM());
    }

    private static boolean cut(double[] left, double way, double from, double least, double most) {
        if (way == 0) {
            return from >= least && from <= most;
        }
        double one = (least - from) / way;
        double other = (most - from) / way;
        left[0] = Math.max(left[0], Math.min(one, other));
        left[1] = Math.min(left[1], Math.max(one, other));
        return left[0] <= left[1];
    }
}
