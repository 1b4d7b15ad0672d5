package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * What was copied: a value that outlives the room that it was taken from. Pasting gives it fresh ids, and names of its own
 * where they are taken.
 */
public record Clip(FloorClip floor, List<Shelf> shelves, List<Tank> tanks, List<Hung> outlets) {
    /** An outlet as it hung in its tank: devices stand on the bottom, so the depth of the water there belongs to it. */
    public record Hung(Outlet outlet, double waterDepthM) {
        /** As it hangs in a tank filled to another depth: as high above the bottom glass as before, and not above the water. */
        Outlet in(double otherDepthM) {
            OptionalDouble depth = outlet.depthM();
            return depth.isEmpty()
                    ? outlet
                    : outlet.withDepthM(
                            OptionalDouble.of(Depths.overTheBottom(depth.getAsDouble(), waterDepthM, otherDepthM)));
        }
    }

    public Clip {
        shelves = List.copyOf(shelves);
        tanks = List.copyOf(tanks);
        outlets = List.copyOf(outlets);
    }

    /**
     * Copies what is chosen: racks with their gangs, shelves, tanks, outlets, runs, gangs, blowers, doors, inner walls. Taps, corners
     * and fittings belong to their pipe and are left out.
     */
    public static Clip of(Room room, Selection chosen) {
        List<Hung> hung = room.seats().stream()
                .filter(seat -> chosen.has(Part.outlet(seat.outlet().id())))
                .map(seat -> new Hung(seat.outlet(), seat.tank().waterDepthM()))
                .toList();
        return new Clip(
                FloorClip.of(room, chosen),
                Find.shelves(room)
                        .filter(shelf -> chosen.has(Part.shelf(shelf.id())))
                        .toList(),
                Find.tanks(room)
                        .filter(tank -> chosen.has(Part.tank(tank.id())))
                        .toList(),
                hung);
    }

    public boolean isEmpty() {
        return floor.isEmpty() && shelves.isEmpty() && tanks.isEmpty() && outlets.isEmpty();
    }

    /** Pastes all that stands on the floor or is a part of the walls: where it was copied, if that is free, else beside. */
    public Attempt ontoFloor(Room room) {
        double[] way = floor.isEmpty() ? new double[2] : FreeWay.into(room, floor);
        return ontoFloor(room, way[0], way[1]);
    }

    /** Pastes all that stands on the floor or is a part of the walls, so far from where it was copied. */
    public Attempt ontoFloor(Room room, double dxM, double dyM) {
        return floor.isEmpty()
                ? Refused.because(
                        "Nothing that stands on the floor was copied.",
                        "Copy a rack, a pipe, a blower, a door or a wall.")
                : Edit.tried(room, "Paste " + floor.words(), before -> floor.pasted(before, dxM, dyM));
    }

    /** Pastes shelves on top of a rack, with what stands on them. */
    public Attempt ontoRack(Room room, RackId rack) {
        if (shelves.isEmpty() || Find.rack(room, rack.text()).isEmpty()) {
            return Refused.because("No shelf was copied, or no rack is chosen.", "Copy a shelf, then choose a rack.");
        }
        return Edit.tried(room, "Paste " + Words.count(shelves.size(), "shelf"), before -> {
            Copier copier = new Copier(before);
            return Each.rack(before, Each.where(each -> each.id().equals(rack), each -> {
                Rack fuller = each;
                for (Shelf shelf : shelves) {
                    double heightM = ShelfEdits.nextHeightM(fuller);
                    fuller = ShelfEdits.with(fuller, copier.shelf(shelf, rack.text(), heightM));
                }
                return fuller;
            }));
        });
    }

    /** Pastes tanks onto a shelf, each into the first gap that is wide enough. */
    public Attempt ontoShelf(Room room, ShelfId shelf) {
        if (tanks.isEmpty()) {
            return Refused.because("No tank was copied.", "Copy one first.");
        }
        Copier copier = new Copier(room);
        List<Tank> copies =
                tanks.stream().map(tank -> copier.tank(tank, shelf.text())).toList();
        return Gaps.placed(room, shelf, copies, "Paste " + Words.tanks(tanks));
    }

    /** Pastes outlets into each of these tanks, as high above the bottom as they hung before. */
    public Attempt intoTanks(Room room, Collection<TankId> into) {
        if (outlets.isEmpty() || Find.tanks(room, into).isEmpty()) {
            return Refused.because("No outlet was copied, or no tank is chosen.", "Copy outlets, then choose tanks.");
        }
        int many = outlets.size() * Find.tanks(room, into).size();
        return Edit.tried(room, "Paste " + Words.count(many, "outlet"), before -> hung(before, into));
    }

    private Room hung(Room room, Collection<TankId> into) {
        Copier copier = new Copier(room);
        return Each.tank(room, Each.where(tank -> into.contains(tank.id()), tank -> {
            List<Outlet> all = new ArrayList<>(tank.outlets());
            outlets.forEach(each ->
                    all.add(copier.outlet(each.in(tank.waterDepthM()), tank.id().text())));
            return tank.withOutlets(all);
        }));
    }
}
