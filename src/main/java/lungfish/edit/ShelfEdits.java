package lungfish.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;

/** Edits of shelves. They are deleted by {@link Deleting}, with the tanks on them. */
public final class ShelfEdits {
    /** Between the surfaces of an empty rack's shelves; common practice, no source. */
    private static final double STEP_M = 0.6;

    private ShelfEdits() {}

    /** One more shelf on top: above the tanks of the topmost, with room for a hand. */
    public static Attempt add(Room room, RackId rack) {
        return Find.rack(room, rack.text())
                .map(there -> add(room, rack, nextHeightM(there)))
                .orElse(Refused.nothing("rack"));
    }

    static double nextHeightM(Rack rack) {
        if (rack.shelves().isEmpty()) {
            return RackTemplate.LOWEST_M;
        }
        Shelf top = rack.shelves().get(rack.shelves().size() - 1);
        double stepM = top.tanks().stream()
                .mapToDouble(tank -> tank.outside().heightM() + RackTemplate.CLEARANCE_M)
                .max()
                .orElse(STEP_M);
        return Metres.clean(top.heightM() + stepM);
    }

    /** One more shelf, its surface that high above the floor, m. */
    public static Attempt add(Room room, RackId rack, double heightM) {
        return Find.rack(room, rack.text())
                .map(there -> Edit.tried(
                        room,
                        "Add a shelf to " + Words.rack(there),
                        before -> Each.rack(
                                before,
                                Each.where(each -> each.id().equals(rack), each -> with(before, each, heightM)))))
                .orElse(Refused.nothing("rack"));
    }

    private static Rack with(Room room, Rack rack, double heightM) {
        String id = Fresh.shelves(room).numbered(rack.id().text());
        return with(rack, new Shelf(new ShelfId(id), heightM, List.of()));
    }

    static Rack with(Rack rack, Shelf shelf) {
        List<Shelf> shelves = new ArrayList<>(rack.shelves());
        shelves.add(shelf);
        return rising(rack, shelves);
    }

    /** Puts the surface of a shelf that high above the floor, m; what stands on it comes along. It may pass other shelves. */
    public static Attempt raise(Room room, ShelfId shelf, double heightM) {
        Optional<Rack> rack = Find.rackOfShelf(room, shelf.text());
        return rack.map(there -> Edit.tried(
                        room,
                        "Move a shelf of " + Words.rack(there),
                        before -> Each.rack(
                                before,
                                Each.where(
                                        each -> each.id().equals(there.id()), each -> raised(each, shelf, heightM)))))
                .orElse(Refused.nothing("shelf"));
    }

    private static Rack raised(Rack rack, ShelfId shelf, double heightM) {
        return rising(
                rack,
                Each.changed(
                        rack.shelves(), Each.where(each -> each.id().equals(shelf), each -> each.atHeightM(heightM))));
    }

    private static Rack rising(Rack rack, List<Shelf> shelves) {
        return rack.withShelves(shelves.stream()
                .sorted(Comparator.comparingDouble(Shelf::heightM))
                .toList());
    }
}
