package lungfish.desktop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/**
 * How the arrows walk over the front of a rack: from tank to tank, outlet to outlet, shelf to shelf, as they lie; and how one
 * goes from a rack into its shelves, tanks and outlets, and out again.
 */
final class FrontWalk {
    /** A part, and where it is: along the rack, and which shelf, from below. */
    private record Place(Part part, double xM, int shelf) {}

    private final Rack rack;

    FrontWalk(Rack rack) {
        this.rack = rack;
    }

    /** The next of the same kind to one side, or the nearest on the next shelf that has one; from nothing, the first tank. */
    Optional<Part> next(Selection from, int dx, int dy) {
        List<Place> all = places();
        Optional<Place> here = from.lead().flatMap(lead -> at(all, lead));
        return here.isPresent()
                ? beside(all, here.get(), dx, dy).map(Place::part)
                : Stream.of(Part.Kind.TANK, Part.Kind.SHELF)
                        .flatMap(kind -> of(all, kind).stream())
                        .map(Place::part)
                        .findFirst();
    }

    private static Optional<Place> at(List<Place> all, Part part) {
        return all.stream().filter(place -> place.part().equals(part)).findFirst();
    }

    private static List<Place> of(List<Place> all, Part.Kind kind) {
        return all.stream().filter(place -> place.part().kind() == kind).toList();
    }

    private static Optional<Place> beside(List<Place> all, Place here, int dx, int dy) {
        List<Place> alike = of(all, here.part().kind());
        if (dx != 0) {
            int next = alike.indexOf(here) + dx;
            return Optional.of(alike.get(Math.floorMod(next, alike.size())));
        }
        return alike.stream()
                .filter(place -> -dy * (place.shelf() - here.shelf()) > 0)
                .min(Comparator.<Place>comparingInt(place -> Math.abs(place.shelf() - here.shelf()))
                        .thenComparingDouble(place -> Math.abs(place.xM() - here.xM())));
    }

    /** Rack to shelf, shelf to tank, tank to outlet: the first that there is. */
    Optional<Part> into(Selection from) {
        return from.lead().flatMap(this::inside).or(() -> next(Selection.NONE, 0, 0));
    }

    private Optional<Part> inside(Part part) {
        return switch (part.kind()) {
            case RACK -> rack.shelves().stream().map(Shelf::id).map(Part::shelf).findFirst();
            case SHELF ->
                rack.shelves().stream()
                        .filter(shelf -> Part.shelf(shelf.id()).equals(part))
                        .flatMap(shelf -> shelf.tanks().stream())
                        .map(tank -> Part.tank(tank.id()))
                        .findFirst();
            case TANK ->
                rack.tanks()
                        .filter(tank -> Part.tank(tank.id()).equals(part))
                        .flatMap(tank -> tank.outlets().stream())
                        .map(outlet -> Part.outlet(outlet.id()))
                        .findFirst();
            default -> Optional.empty();
        };
    }

    /** Outlet to tank, tank to shelf, shelf to rack. */
    Part outOf(Selection from) {
        return from.lead()
                .flatMap(part -> rack.shelves().stream()
                        .flatMap(shelf -> holder(shelf, part).stream())
                        .findFirst())
                .orElse(Part.rack(rack.id()));
    }

    private static Optional<Part> holder(Shelf shelf, Part part) {
        return shelf.tanks().stream()
                .filter(tank -> tank.outlets().stream()
                        .anyMatch(outlet -> Part.outlet(outlet.id()).equals(part)))
                .map(tank -> Part.tank(tank.id()))
                .findFirst()
                .or(() -> shelf.tanks().stream()
                        .filter(tank -> Part.tank(tank.id()).equals(part))
                        .map(tank -> Part.shelf(shelf.id()))
                        .findFirst());
    }

    private List<Place> places() {
        List<Place> all = new ArrayList<>();
        for (int i = 0; i < rack.shelves().size(); i++) {
            Shelf shelf = rack.shelves().get(i);
            all.add(new Place(Part.shelf(shelf.id()), 0, i));
            for (Tank tank : shelf.tanks()) {
                all.add(new Place(
                        Part.tank(tank.id()), tank.xM() + tank.outside().lengthM() / 2, i));
                for (int j = 0; j < tank.outlets().size(); j++) {
                    Outlet outlet = tank.outlets().get(j);
                    double share = (j + 1.0) / (tank.outlets().size() + 1.0);
                    all.add(new Place(
                            Part.outlet(outlet.id()),
                            tank.xM() + share * tank.outside().lengthM(),
                            i));
                }
            }
        }
        return all;
    }
}
