package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * What was copied: a value that outlives the room that it was taken from. Pasting gives it fresh ids, and names of its own
 * where they are taken.
 */
public record Clip(List<Rack> racks, List<Tank> tanks, List<Hung> outlets, List<Run> runs, List<Blower> blowers) {
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
        racks = List.copyOf(racks);
        tanks = List.copyOf(tanks);
        outlets = List.copyOf(outlets);
        runs = List.copyOf(runs);
        blowers = List.copyOf(blowers);
    }

    /** Copies what is chosen: racks, tanks, outlets, runs and blowers. Doors, walls, taps and corners are left out. */
    public static Clip of(Room room, Selection chosen) {
        List<Hung> hung = room.seats().stream()
                .filter(seat -> chosen.has(Part.outlet(seat.outlet().id())))
                .map(seat -> new Hung(seat.outlet(), seat.tank().waterDepthM()))
                .toList();
        return new Clip(
                room.racks().stream()
                        .filter(rack -> chosen.has(Part.rack(rack.id())))
                        .toList(),
                Find.tanks(room)
                        .filter(tank -> chosen.has(Part.tank(tank.id())))
                        .toList(),
                hung,
                room.runs().stream()
                        .filter(run -> chosen.has(Part.run(run.id())))
                        .toList(),
                room.blowers().stream()
                        .filter(blower -> chosen.has(Part.blower(blower.id())))
                        .toList());
    }

    public boolean isEmpty() {
        return racks.isEmpty() && tanks.isEmpty() && outlets.isEmpty() && runs.isEmpty() && blowers.isEmpty();
    }

    /** Pastes racks, runs and blowers, so far from where they were copied. */
    public Attempt ontoFloor(Room room, double dxM, double dyM) {
        if (racks.isEmpty() && runs.isEmpty() && blowers.isEmpty()) {
            return Refused.because("Nothing that stands on the floor was copied.", "Copy a rack, a pipe or a blower.");
        }
        return Edit.tried(room, "Paste " + floorWords(), before -> pasted(before, dxM, dyM));
    }

    String floorWords() {
        int kinds = (racks.isEmpty() ? 0 : 1) + (runs.isEmpty() ? 0 : 1) + (blowers.isEmpty() ? 0 : 1);
        if (kinds > 1) {
            return racks.size() + runs.size() + blowers.size() + " parts";
        }
        if (!racks.isEmpty()) {
            return Words.racks(racks);
        }
        return runs.isEmpty() ? Words.count(blowers.size(), "blower") : PartWords.runs(runs);
    }

    Room pasted(Room room, double dxM, double dyM) {
        Copier copier = new Copier(room);
        List<Rack> allRacks = new ArrayList<>(room.racks());
        racks.forEach(rack -> allRacks.add(Moves.moved(copier.rack(rack), dxM, dyM)));
        List<Run> allRuns = new ArrayList<>(room.runs());
        runs.forEach(run -> allRuns.add(moved(copier.run(run), dxM, dyM)));
        List<Blower> allBlowers = new ArrayList<>(room.blowers());
        blowers.forEach(blower -> allBlowers.add(moved(copier.blower(blower), dxM, dyM)));
        return room.withRacks(allRacks).withRuns(allRuns).withBlowers(allBlowers);
    }

    private static Run moved(Run run, double dxM, double dyM) {
        return run.through(
                run.points().stream().map(point -> Moves.moved(point, dxM, dyM)).toList(), run.closed());
    }

    private static Blower moved(Blower blower, double dxM, double dyM) {
        return blower.sited(blower.siting().at(blower.siting().place().map(point -> Moves.moved(point, dxM, dyM))));
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
