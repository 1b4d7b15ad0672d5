package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import lungfish.room.Outlet;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Duplicates what is chosen, beside it. */
public final class Copies {
    private Copies() {}

    /**
     * Racks, pipes and blowers are set beside their models where the floor is free; tanks into the next gap of their shelf;
     * outlets into their own tank.
     */
    public static Attempt duplicate(Room room, Selection chosen) {
        Clip clip = Clip.of(room, chosen);
        if (!clip.floor().isEmpty()) {
            double[] way = FreeWay.beside(room, clip.floor());
            return Edit.tried(room, "Duplicate " + clip.floor().words(), before -> clip.floor()
                    .pasted(before, way[0], way[1]));
        }
        if (!clip.tanks().isEmpty()) {
            return tanks(room, clip.tanks());
        }
        return clip.outlets().isEmpty() ? Refused.nothing("part that can be duplicated") : outlets(room, chosen);
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
