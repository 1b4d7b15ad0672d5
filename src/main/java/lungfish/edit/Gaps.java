package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;

/** Finds a place for a tank on a shelf. */
final class Gaps {
    private static final double ROUNDING_M = 1e-9;

    private Gaps() {}

    /** The left end of the first gap that holds so much, with a finger's room to the neighbours where there is any; empty if none does. */
    static OptionalDouble first(Shelf shelf, double rackWidthM, double lengthM) {
        double fromM = 0;
        for (Tank tank : fromLeft(shelf)) {
            if (tank.xM() - fromM >= lengthM - ROUNDING_M) {
                return OptionalDouble.of(placed(fromM, tank.xM(), lengthM));
            }
            fromM = Math.max(fromM, tank.endXM());
        }
        boolean fits = rackWidthM - fromM >= lengthM - ROUNDING_M;
        return fits ? OptionalDouble.of(placed(fromM, rackWidthM, lengthM)) : OptionalDouble.empty();
    }

    private static double placed(double fromM, double toM, double lengthM) {
        double spareM = toM - fromM - lengthM;
        return Metres.clean(fromM + Math.max(0, Math.min(RackTemplate.GAP_M, spareM / 2)));
    }

    static List<Tank> fromLeft(Shelf shelf) {
        return shelf.tanks().stream()
                .sorted(Comparator.comparingDouble(Tank::xM))
                .toList();
    }

    /** The shelf with one tank more, in its first gap. */
    private static Optional<Shelf> with(Shelf shelf, double rackWidthM, Tank tank) {
        OptionalDouble gap = first(shelf, rackWidthM, tank.outside().lengthM());
        return gap.isEmpty() ? Optional.empty() : Optional.of(with(shelf, tank.atXM(gap.getAsDouble())));
    }

    /** The shelf with one tank more, its list still from left to right. */
    static Shelf with(Shelf shelf, Tank tank) {
        List<Tank> tanks = new ArrayList<>(shelf.tanks());
        tanks.add(tank);
        tanks.sort(Comparator.comparingDouble(Tank::xM));
        return shelf.withTanks(tanks);
    }

    /** Puts tanks onto a shelf, each into the first gap. */
    static Attempt placed(Room room, ShelfId id, List<Tank> tanks, String done) {
        Optional<Rack> rack = Find.rackOfShelf(room, id.text());
        Optional<Shelf> shelf = Find.shelf(room, id.text());
        if (rack.isEmpty() || shelf.isEmpty()) {
            return Refused.nothing("shelf");
        }
        double widthM = rack.get().widthM();
        Shelf filled = shelf.get();
        for (Tank tank : tanks) {
            Optional<Shelf> fuller = with(filled, widthM, tank);
            if (fuller.isEmpty()) {
                return full(rack.get(), tank);
            }
            filled = fuller.get();
        }
        Shelf after = filled;
        return Edit.tried(
                room,
                done,
                before -> Each.shelf(before, Each.where(each -> each.id().equals(id), each -> after)));
    }

    static Refused full(Rack rack, Tank tank) {
        return Refused.because(
                "No gap on that shelf of " + Words.rack(rack) + " is {length} long.",
                "Take a shorter tank, another shelf, or make the rack wider.",
                Refused.length("length", tank.outside().lengthM()));
    }
}
