package lungfish.siphon;

import java.util.List;
import lungfish.room.Point;

/**
 * A piece of pipe or hose between two nodes.
 *
 * @param points from the first node to the second, both included
 */
record Link(int from, int to, List<Point> points) {
    Link {
        points = List.copyOf(points);
    }

    /** Its highest place, m above the floor. */
    double crestM() {
        return points.stream().mapToDouble(Point::zM).max().orElseThrow();
    }

    double lengthM() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i - 1).distanceM(points.get(i));
        }
        return sum;
    }
}
