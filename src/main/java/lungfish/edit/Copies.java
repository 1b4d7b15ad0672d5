package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Duplicates what is chosen, beside it. */
public final class Copies {
    private static final int MOST_AT_ONCE = 200;

    private Copies() {}

    /**
     * Racks, pipes and blowers are set beside their models where the floor is free; a shelf on top of its rack; tanks into the
     * next gap of their shelf; outlets into their own tank.
     */
    public static Attempt duplicate(Room room, Selection chosen) {
        Clip clip = Clip.of(room, chosen);
        if (!clip.floor().isEmpty()) {
            double[] way = FreeWay.beside(room, clip.floor());
            return Edit.tried(room, "Duplicate " + clip.floor().words(), before -> clip.floor()
                    .pasted(before, way[0], way[1]));
        }
        if (!clip.shelves().isEmpty()) {
            return onTop(room, clip.shelves().get(0).id());
        }
        if (!clip.tanks().isEmpty()) {
            return tanks(room, clip.tanks());
        }
        return clip.outlets().isEmpty() ? Refused.nothing("part that can be duplicated") : outlets(room, chosen);
    }

    private static Attempt onTop(Room room, ShelfId shelf) {
        return Find.rackOfShelf(room, shelf.text())
                .map(rack -> FrontMoves.shelfCopy(room, shelf, ShelfEdits.nextHeightM(rack)))
                .orElse(Refused.nothing("shelf"));
    }

    /** Copies of a tank along its shelf, as many as the gaps hold; never more than a hall could use. */
    public static Attempt fill(Room room, TankId model) {
        Optional<Tank> tank = Find.tank(room, model.text());
        Optional<Shelf> shelf = Find.shelves(room)
                .filter(each ->
                        each.tanks().stream().anyMatch(there -> there.id().equals(model)))
                .findFirst();
        if (tank.isEmpty() || shelf.isEmpty()) {
            return Refused.nothing("tank");
        }
        String done = "Fill the shelf of " + Words.tank(tank.get());
        Attempt first = copied(room, tank.get(), shelf.get().id(), done);
        return first.match(
                edit -> {
                    List<Rack> racks = filled(
                                    edit.of(room), tank.get(), shelf.get().id(), done)
                            .racks();
                    return Edit.tried(room, done, before -> before.withRacks(racks));
                },
                refused -> refused);
    }

    private static Room filled(Room room, Tank tank, ShelfId shelf, String done) {
        Room full = room;
        Optional<Edit> next = copied(full, tank, shelf, done).edit();
        for (int more = 1; next.isPresent() && more < MOST_AT_ONCE; more++) {
            full = next.get().of(full);
            next = copied(full, tank, shelf, done).edit();
        }
        return full;
    }

    private static Attempt copied(Room room, Tank tank, ShelfId shelf, String done) {
        return Gaps.placed(room, shelf, List.of(new Copier(room).tank(tank, shelf.text())), done);
    }

    private static Attempt tanks(Room room, List<Tank> tanks) {
        String done = "Duplicate " + Words.tanks(tanks);
        Copier copier = new Copier(room);
        Room step = room;
        for (Tank tank : tanks) {
            Shelf shelf = Find.shelves(step)
                    .filter(each ->
                            each.tanks().stream().anyMatch(there -> there.id().equals(tank.id())))
                    .findFirst()
                    .orElseThrow();
            Attempt placed = Gaps.placed(
                    step, shelf.id(), List.of(copier.tank(tank, shelf.id().text())), done);
            if (placed.refused().isPresent()) {
                return placed;
            }
            step = placed.edit().orElseThrow().of(step);
        }
        List<Rack> racks = step.racks();
        return Edit.tried(room, done, before -> before.withRacks(racks));
    }

    private static Attempt outlets(Room room, Selection chosen) {
        int many = (int) chosen.all(Part.Kind.OUTLET).count();
        return Edit.tried(room, "Duplicate " + Words.count(many, "outlet"), before -> {
            Copier copier = new Copier(before);
            return Each.tank(before, tank -> {
                List<Outlet> all = new ArrayList<>(tank.outlets());
                tank.outlets().stream()
                        .filter(outlet -> chosen.has(Part.outlet(outlet.id())))
                        .forEach(outlet ->
                                all.add(copier.outlet(outlet, tank.id().text())));
                return all.size() == tank.outlets().size() ? tank : tank.withOutlets(all);
            });
        });
    }
}
