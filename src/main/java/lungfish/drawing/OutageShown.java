package lungfish.drawing;

import java.util.Optional;
import lungfish.outage.TankDrill;

/**
 * What the time line of an outage shows.
 *
 * @param atS where its cursor stands
 * @param tank whose oxygen is drawn by itself
 */
public record OutageShown(OutagePlayed played, double atS, Optional<TankDrill> tank) {}
