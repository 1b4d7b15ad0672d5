package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * Where a tank that is slid along a shelf comes to rest.
 *
 * @param xM its left side, from the left end of the shelf
 * @param words why: "rack's end", "tank 3"; empty where nothing is near
 */
public record ShelfSnap(double xM, Optional<String> words) {
    private record Stop(double xM, String words) {}

    /**
     * Draws a tank to the ends of the rack and to its neighbours, where they are near enough.
     *
     * @param tank its id, so that it is not drawn to itself
     * @param lengthM of the tank
     * @param xM where its left side would be
     */
    public static ShelfSnap at(Rack rack, Shelf shelf, TankId tank, double lengthM, double xM, double toleranceM) {
        List<Stop> stops = new ArrayList<>();
        stops.add(new Stop(0, "rack's end"));
        stops.add(new Stop(rack.widthM() - lengthM, "rack's end"));
        for (Tank other : shelf.tanks()) {
            if (!other.id().equals(tank)) {
                stops.add(new Stop(other.endXM(), Words.tank(other)));
                stops.add(new Stop(other.xM() - lengthM, Words.tank(other)));
            }
        }
        return stops.stream()
                .filter(stop -> Math.abs(stop.xM - xM) <= toleranceM)
                .min(Comparator.comparingDouble(stop -> Math.abs(stop.xM - xM)))
                .map(stop -> new ShelfSnap(Metres.clean(stop.xM), Optional.of(stop.words)))
                .orElse(new ShelfSnap(xM, Optional.empty()));
    }
}
