package lungfish.outage;

import java.util.OptionalDouble;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/**
 * A tank in place.
 *
 * @param essential whether one of its outlets is to be kept going
 * @param judged whether anything is known of what lives in it
 * @param startGPerM3 its oxygen with all its air on, by the cautious figure; absent where nothing is known of what lives in it
 */
public record Vessel(
        Rack rack, Shelf shelf, Tank tank, boolean essential, boolean judged, OptionalDouble startGPerM3) {}
