package lungfish.edit;

import java.util.List;
import java.util.Optional;
import lungfish.room.Outlet;
import lungfish.room.Point;

/**
 * Where a point comes to rest.
 *
 * @param place the point itself where nothing is near; on a pipe it takes the height of the pipe
 * @param guides why; empty where nothing is near
 * @param onto the place on a pipe that it came to rest on
 * @param closes whether it meets the start of what is being drawn, so that it becomes a loop
 */
public record SnappedPoint(Point place, List<Guide> guides, Optional<Outlet.OnRun> onto, boolean closes) {
    public SnappedPoint {
        guides = List.copyOf(guides);
    }
}
