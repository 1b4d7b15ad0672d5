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
    /** How far a copy is set off where there is no free floor beside its model. */
    private static final double OFFSET_M = 0.2;

    /** Racks stand back to back and side by side: touching is no overlap. */
    private static final double TOUCHING_M = 1e-6;

    private Copies() {}

    /**
     * Racks, pipes and blowers are set beside their models where the floor is free; tanks into the next gap of their shelf;
     * outlets into their own tank.
     */
    public static Attempt duplicate(Room room, Selection chosen) {
        Clip clip = Clip.of(room, chosen);
        if (!clip.racks().isEmpty() || !clip.runs().isEmpty() || !clip.blowers().isEmpty()) {
            double[] way = wayFor(room, clip);
            return Edit.tried(room, "Duplicate " + clip.floorWords(), before -> clip.pasted(before, way[0], way[1]));
        }
        if (!clip.tanks().isEmpty()) {
            return tanks(room, clip.tanks());
        }
        return clip.outlets().isEmpty() ? Refused.nothing("part that can be duplicated") : outlets(room, chosen);
    }

    /** Right, left, below or above the racks; else a little way towards the middle of the room. */
    private static double[] wayFor(Room room, Clip clip) {
        double towardsX = OFFSET_M;
        double towardsY = OFFSET_M;
        if (!clip.racks().isEmpty()) {
            Box all = Box.around(clip.racks().stream().map(Box::of).toList());
            List<double[]> ways = List.of(
                    new double[] {all.spanXM(), 0},
                    new double[] {-all.spanXM(), 0},
                    new double[] {0, all.spanYM()},
                    new double[] {0, -all.spanYM()});
            for (double[] way : ways) {
                if (isFree(room, clip.racks(), way)) {
                    return way;
                }
            }
            towardsX = all.midXM() > room.shell().lengthM() / 2 ? -OFFSET_M : OFFSET_M;
            towardsY = all.midYM() > room.shell().widthM() / 2 ? -OFFSET_M : OFFSET_M;
        }
        return new double[] {towardsX, towardsY};
    }

    private static boolean isFree(Room room, List<Rack> racks, double[] way) {
        Box floor = new Box(0, 0, room.shell().lengthM(), room.shell().widthM());
        return racks.stream()
                .map(rack -> Box.of(rack).moved(way[0], way[1]))
                .allMatch(box -> floor.holds(box)
                        && room.racks().stream()
                                .noneMatch(other -> Box.of(other).overlaps(box, TOUCHING_M)));
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
