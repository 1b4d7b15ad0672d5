package lungfish.siphon;

import java.util.List;
import lungfish.room.Point;

/**
 * The course of water through the room.
 *
 * @param points from the air release in its tank, over the rim, along airline and pipe, to where it ends
 * @param crest its highest place behind the rim of its own tank
 */
public record WaterPath(List<Point> points, Point crest) {
    public WaterPath {
        points = List.copyOf(points);
    }
}
