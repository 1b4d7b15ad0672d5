package lungfish.piping;

import java.util.Optional;
import lungfish.room.Point;
import lungfish.room.RunId;

/**
 * Where a node of the network is in the room.
 *
 * @param run the run it lies on; absent at a gang or a blower
 * @param alongM distance along that run
 */
public record Spot(Point place, Optional<RunId> run, double alongM) {}
