package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * Moves over the front of a rack: tanks along their shelf and to others, outlets up and down and into other tanks, and copies
 * of them. A drag asks for the edit anew from the room in which it began, with the whole way so far.
 */
public final class FrontMoves {
    /** Where nothing that is chosen can be moved on the front of a rack. */
    public static final Refused NOTHING =
            Refused.because("Nothing that is chosen can be moved here.", "Choose a tank, a device or a shelf.");

    /** Where something that stands on a shelf would stand on none. */
    public static final Refused NO_SHELF = Refused.because("There is no shelf there.", "Add a shelf first.");

    private FrontMoves() {}

    /** Moves tanks so far to the right, m, and so many shelves up. */
    public static Attempt tanks(Room room, Collection<TankId> ids, double alongM, int shelvesUp) {
        return moved(room, ids, alongM, shelvesUp, "Move ", false);
    }

    /** Puts copies of tanks so far to the right of them, m, and so many shelves up. */
    public static Attempt tankCopies(Room room, Collection<TankId> ids, double alongM, int shelvesUp) {
        return moved(room, ids, alongM, shelvesUp, "Copy ", true);
    }

    private static Attempt moved(
            Room room, Collection<TankId> ids, double alongM, int shelvesUp, String verb, boolean copies) {
        List<Tank> tanks = Find.tanks(room, ids);
        if (tanks.isEmpty()) {
            return Refused.nothing("tank");
        }
        if (room.racks().stream().anyMatch(rack -> leaves(rack, ids, shelvesUp))) {
            return NO_SHELF;
        }
        return Edit.tried(room, verb + Words.tanks(tanks), before -> {
            Copier copier = new Copier(before);
            return Each.rack(
                    before,
                    rack -> rack.tanks().noneMatch(tank -> ids.contains(tank.id()))
                            ? rack
                            : moved(rack, ids, alongM, shelvesUp, copies ? Optional.of(copier) : Optional.empty()));
        });
    }

    private static boolean leaves(Rack rack, Collection<TankId> ids, int shelvesUp) {
        int shelves = rack.shelves().size();
        return IntStream.range(0, shelves)
                .filter(i -> i + shelvesUp < 0 || i + shelvesUp >= shelves)
                .anyMatch(i -> rack.shelves().get(i).tanks().stream().anyMatch(tank -> ids.contains(tank.id())));
    }

    private static Rack moved(
            Rack rack, Collection<TankId> ids, double alongM, int shelvesUp, Optional<Copier> copier) {
        List<Shelf> after = new ArrayList<>();
        for (int i = 0; i < rack.shelves().size(); i++) {
            Shelf shelf = rack.shelves().get(i);
            List<Tank> tanks =
                    new ArrayList<>(Each.kept(shelf.tanks(), tank -> copier.isPresent() || !ids.contains(tank.id())));
            int from = i - shelvesUp;
            if (from >= 0 && from < rack.shelves().size()) {
                rack.shelves().get(from).tanks().stream()
                        .filter(tank -> ids.contains(tank.id()))
                        .map(tank -> tank.atXM(Metres.clean(tank.xM() + alongM)))
                        .map(tank -> copier.map(one -> one.tank(tank, shelf.id().text()))
                                .orElse(tank))
                        .forEach(tanks::add);
            }
            after.add(shelf.withTanks(Gaps.fromLeft(shelf.withTanks(tanks))));
        }
        return rack.withShelves(after);
    }

    /** Hangs outlets each as deep below its water line, m, where they are. */
    public static Attempt depths(Room room, Map<OutletId, Double> depthsM) {
        return OutletEdits.change(room, depthsM.keySet(), "Set the depth of ", outlet -> hung(outlet, depthsM));
    }

    private static Outlet hung(Outlet outlet, Map<OutletId, Double> depthsM) {
        Double depth = depthsM.get(outlet.id());
        return depth == null ? outlet : outlet.withDepthM(OptionalDouble.of(depth));
    }

    /** Moves outlets into another tank, each as deep below its water line, m. */
    public static Attempt outlets(Room room, Map<OutletId, Double> depthsM, TankId to) {
        return then(
                room,
                OutletEdits.carry(room, depthsM.keySet(), to),
                after -> Each.outlet(after, outlet -> hung(outlet, depthsM)));
    }

    /** Hangs copies of outlets into a tank, each as deep below its water line, m. */
    public static Attempt outletCopies(Room room, Map<OutletId, Double> depthsM, TankId to) {
        List<Outlet> models = Find.outlets(room, depthsM.keySet());
        return models.isEmpty() || Find.tank(room, to.text()).isEmpty()
                ? Refused.nothing("outlet or tank")
                : Edit.tried(room, "Copy " + PartWords.outlets(models), before -> {
                    Copier copier = new Copier(before);
                    return Each.tank(before, Each.where(tank -> tank.id().equals(to), tank -> {
                        List<Outlet> all = new ArrayList<>(tank.outlets());
                        models.forEach(model -> all.add(copier.outlet(hung(model, depthsM), to.text())));
                        return tank.withOutlets(all);
                    }));
                });
    }

    /** Another step of the same edit. */
    private static Attempt then(Room room, Attempt first, UnaryOperator<Room> second) {
        return first.match(
                edit -> Edit.tried(room, edit.done(), before -> second.apply(edit.of(before))), refused -> refused);
    }

    /** A copy of a shelf with what stands on it, its surface that high above the floor, m. */
    public static Attempt shelfCopy(Room room, ShelfId id, double heightM) {
        return Find.rackOfShelf(room, id.text())
                .map(rack -> Edit.tried(
                        room,
                        "Copy a shelf of " + Words.rack(rack),
                        before -> Each.rack(
                                before,
                                Each.where(
                                        each -> each.id().equals(rack.id()),
                                        each -> ShelfEdits.with(
                                                each,
                                                new Copier(before)
                                                        .shelf(
                                                                shelf(each, id),
                                                                each.id().text(),
                                                                heightM))))))
                .orElse(Refused.nothing("shelf"));
    }

    private static Shelf shelf(Rack rack, ShelfId id) {
        return rack.shelves().stream()
                .filter(shelf -> shelf.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
