package lungfish.desktop;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lungfish.edit.Attempt;
import lungfish.edit.FrontMoves;
import lungfish.edit.OutletEdits;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.edit.ShelfEdits;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * What the arrows do to what is chosen on the front of a rack. Tanks go along their shelf, or to the next one; devices up and
 * down in their water, or into the tank beside; shelves up and down.
 */
final class FrontNudge {
    /** How many fine steps a step is. */
    private static final double FINE = 5;

    private final View view;
    private final Front front;
    private final Rack rack;
    private final Selection chosen;

    private FrontNudge(View view, Front front, Rack rack, Selection chosen) {
        this.view = view;
        this.front = front;
        this.rack = rack;
        this.chosen = chosen;
    }

    static Attempt of(View view, Front front, Selection chosen, int dx, int dy, boolean finely) {
        return front.rack()
                .map(rack -> new FrontNudge(view, front, rack, chosen).attempt(dx, dy, finely))
                .orElse(FrontMoves.NOTHING);
    }

    private Room room() {
        return view.desk().room();
    }

    private Attempt attempt(int dx, int dy, boolean finely) {
        Part.Kind kind = chosen.lead().map(Part::kind).orElse(Part.Kind.RACK);
        return switch (kind) {
            case TANK -> tanks(dx, dy, finely);
            case OUTLET -> dx == 0 ? deeper(dy * FrontResting.depthGridM(view) / (finely ? FINE : 1)) : into(dx);
            case SHELF -> shelf(dy * (finely ? Resting.fineM(view) : Resting.gridM(view)));
            default -> FrontMoves.NOTHING;
        };
    }

    private Attempt tanks(int dx, int dy, boolean finely) {
        double stepM = finely ? Resting.fineM(view) : Resting.gridM(view);
        return FrontMoves.tanks(room(), chosen.ids(Part.Kind.TANK, TankId::new), dx * stepM, -dy);
    }

    private Attempt deeper(double byM) {
        Map<OutletId, Double> depths = new LinkedHashMap<>();
        rack.tanks().forEach(tank -> tank.outlets().stream()
                .map(Outlet::id)
                .filter(id -> chosen.has(Part.outlet(id)))
                .forEach(id -> depths.put(id, front.depthM(tank, id, tank, byM))));
        return FrontMoves.depths(room(), depths);
    }

    /** Into the tank beside that of the leading one, each as deep as it hangs, if the water there is as deep. */
    private Attempt into(int dx) {
        List<OutletId> ids = chosen.ids(Part.Kind.OUTLET, OutletId::new);
        OutletId lead = ids.get(ids.size() - 1);
        Optional<TankId> to = rack.shelves().stream()
                .filter(shelf -> shelf.tanks().stream().anyMatch(tank -> Front.hangs(tank, lead)))
                .flatMap(shelf -> beside(shelf, lead, dx).stream())
                .findFirst();
        return OutletEdits.carry(room(), ids, to.orElse(new TankId("")));
    }

    private static Optional<TankId> beside(Shelf shelf, OutletId lead, int dx) {
        List<Tank> tanks = shelf.tanks();
        return tanks.stream()
                .filter(tank -> Front.hangs(tank, lead))
                .map(tank -> tanks.get(Math.floorMod(tanks.indexOf(tank) + dx, tanks.size()))
                        .id())
                .findFirst();
    }

    private Attempt shelf(double downM) {
        ShelfId id = chosen.ids(Part.Kind.SHELF, ShelfId::new).get(0);
        double heightM = rack.shelves().stream()
                .filter(shelf -> shelf.id().equals(id))
                .mapToDouble(Shelf::heightM)
                .findFirst()
                .orElse(0);
        return ShelfEdits.raise(room(), id, heightM - downM);
    }
}
