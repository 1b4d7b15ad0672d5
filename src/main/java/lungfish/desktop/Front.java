package lungfish.desktop;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lungfish.catalogue.AssumedValue;
import lungfish.edit.Part;
import lungfish.edit.Selecting;
import lungfish.reason.Assumable;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** The rack whose front is open, and what stands where in it. Drawn down the page: what is higher has a lesser y. */
final class Front {
    /** A tank and the shelf that it stands on. */
    record Standing(Shelf shelf, Tank tank) {
        /** How deep in its water a place of the front is, m; negative above the water line. */
        double depthM(double yM) {
            return shelf.heightM() + tank.waterDepthM() + yM;
        }

        boolean holds(Spot spot) {
            double heightM = -spot.yM();
            return spot.xM() >= tank.xM()
                    && spot.xM() <= tank.endXM()
                    && heightM >= shelf.heightM()
                    && heightM <= shelf.heightM() + tank.outside().heightM();
        }
    }

    private final View view;
    private Optional<RackId> open = Optional.empty();

    Front(View view) {
        this.view = view;
    }

    void open(RackId id) {
        open = Optional.of(id);
    }

    Optional<RackId> id() {
        return open;
    }

    /** As it is kept, whatever is tried; empty when it is gone. */
    Optional<Rack> rack() {
        return in(view.desk().room());
    }

    Optional<Rack> in(Room room) {
        return room.racks().stream()
                .filter(rack -> open.equals(Optional.of(rack.id())))
                .findFirst();
    }

    /** The one before or after it in the room's order, beginning anew at the ends; empty where it is the only one. */
    Optional<Rack> beside(int by) {
        List<Rack> all = view.desk().room().racks();
        return rack().map(all::indexOf)
                .map(at -> all.get(Math.floorMod(at + by, all.size())))
                .filter(other -> !open.equals(Optional.of(other.id())));
    }

    /** Whether a part that is chosen stands in this rack, or is it. */
    boolean holds(Part part) {
        return Selecting.rackOf(view.desk().room(), part).map(Rack::id).equals(open.filter(id -> rack().isPresent()));
    }

    /** How deep an outlet lets its air go, as typed or as the plan takes it, m. */
    double depthM(Tank tank, OutletId id) {
        AssumedValue above = view.desk().shared().catalogue().assumed(Assumable.WATER_ABOVE_BOTTOM);
        return tank.outlets().stream()
                .filter(outlet -> outlet.id().equals(id))
                .findFirst()
                .map(Outlet::depthM)
                .orElse(OptionalDouble.empty())
                .orElse(Math.max(0, tank.waterDepthM() - above.si()));
    }

    /** The same, so much deeper, but within the water of a tank that it is in or comes to. */
    double depthM(Tank tank, OutletId id, Tank into, double deeperM) {
        return Math.max(0, Math.min(into.waterDepthM(), depthM(tank, id) + deeperM));
    }

    /** Whether an outlet hangs in a tank. */
    static boolean hangs(Tank tank, OutletId id) {
        return tank.outlets().stream().anyMatch(outlet -> outlet.id().equals(id));
    }

    /** How deep the devices of a rack hang, by what they are called; but for some. */
    Map<String, Double> depthsM(Rack rack, List<OutletId> but) {
        Map<String, Double> depths = new LinkedHashMap<>();
        rack.tanks().forEach(tank -> tank.outlets().stream()
                .map(Outlet::id)
                .filter(id -> !but.contains(id))
                .forEach(id -> depths.put(id.text(), depthM(tank, id))));
        return depths;
    }

    /** Where tanks begin, end and have their middle, and the ends of the rack, m. */
    static List<Double> endsM(Rack rack) {
        return Stream.concat(
                        Stream.of(0.0, rack.widthM()),
                        rack.tanks()
                                .flatMap(tank -> Stream.of(tank.xM(), (tank.xM() + tank.endXM()) / 2, tank.endXM())))
                .toList();
    }

    /** The floor and the boards of the shelves, down the page, m. */
    static List<Double> boardsM(Rack rack) {
        return Stream.concat(Stream.of(0.0), rack.shelves().stream().map(shelf -> -shelf.heightM()))
                .toList();
    }

    static Optional<Standing> standing(Rack rack, Predicate<Standing> meant) {
        return rack.shelves().stream()
                .flatMap(shelf -> shelf.tanks().stream().map(tank -> new Standing(shelf, tank)))
                .filter(meant)
                .findFirst();
    }

    /** The shelf whose board is nearest to a height above the floor. */
    static Optional<Shelf> nearest(Rack rack, double heightM) {
        return rack.shelves().stream().min(Comparator.comparingDouble(shelf -> Math.abs(shelf.heightM() - heightM)));
    }

    /** The shelf on which something there would stand: the highest below it, or else the lowest. */
    static Optional<Shelf> below(Rack rack, double heightM) {
        return rack.shelves().stream()
                .filter(shelf -> shelf.heightM() <= heightM)
                .max(Comparator.comparingDouble(Shelf::heightM))
                .or(() -> rack.shelves().stream().findFirst());
    }
}
