package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;

/**
 * The height at which a shelf that is moved up or down comes to rest.
 *
 * @param heightM of its surface above the floor
 * @param why what drew it there; empty where nothing is near
 */
public record HeightSnap(double heightM, Optional<Stop> why) {
    /**
     * Draws a shelf to the steps between the other shelves of its rack, to just above the tanks below it with room for a
     * hand, and to the shelves of other racks, where they are near enough; else to the grid.
     *
     * @param moving empty for a new shelf
     * @param gridM empty: none
     */
    public static HeightSnap at(
            Room room, Rack rack, Optional<ShelfId> moving, double heightM, double toleranceM, OptionalDouble gridM) {
        List<Shelf> others = Each.kept(rack.shelves(), shelf -> !moving.equals(Optional.of(shelf.id())));
        List<Stop> stops = new ArrayList<>();
        others.forEach(shelf -> shelf.tanks().stream()
                .mapToDouble(tank -> tank.outside().heightM())
                .max()
                .ifPresent(highM ->
                        stops.add(Stop.at(shelf.heightM() + highM + RackTemplate.CLEARANCE_M, "room for a hand"))));
        stepped(stops, others);
        level(stops, room, rack);
        List<Stop> free = stops.stream()
                .filter(stop -> others.stream().noneMatch(shelf -> shelf.heightM() == Metres.clean(stop.atM())))
                .toList();
        Optional<Stop> why = Stop.nearest(free, heightM, toleranceM);
        return new HeightSnap(Math.max(0, Stop.rest(why, heightM, gridM)), why);
    }

    private static void stepped(List<Stop> stops, List<Shelf> others) {
        for (int i = 1; i < others.size(); i++) {
            double stepM = others.get(i).heightM() - others.get(i - 1).heightM();
            for (Shelf other : others) {
                stops.add(Stop.at(other.heightM() + stepM, "same step"));
                stops.add(Stop.at(other.heightM() - stepM, "same step"));
            }
        }
        for (int i = 1; i < others.size(); i++) {
            double middleM = (others.get(i).heightM() + others.get(i - 1).heightM()) / 2;
            stops.add(Stop.at(middleM, "in the middle"));
        }
    }

    private static void level(List<Stop> stops, Room room, Rack rack) {
        room.racks().stream().filter(other -> !other.id().equals(rack.id())).forEach(other -> other.shelves()
                .forEach(shelf -> stops.add(Stop.at(shelf.heightM(), "level with " + Words.rack(other)))));
    }
}
