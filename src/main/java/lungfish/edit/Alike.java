package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * "The same for every tank": gives other tanks the outlets of one. An outlet that is there already stays the outlet that it
 * is, with its id, tap, airline length and setting, and becomes like its model otherwise; missing ones are added, surplus
 * ones go.
 */
public final class Alike {
    private Alike() {}

    /** Every tank on the shelf of this one. */
    public static Attempt onShelf(Room room, TankId model) {
        return of(room, model, "shelf", (rack, shelf) -> isOn(shelf, model));
    }

    /** Every tank in the rack of this one. */
    public static Attempt onRack(Room room, TankId model) {
        return of(room, model, "rack", (rack, shelf) -> rack.shelves().stream().anyMatch(each -> isOn(each, model)));
    }

    private static boolean isOn(Shelf shelf, TankId tank) {
        return shelf.tanks().stream().anyMatch(each -> each.id().equals(tank));
    }

    /** Whether the tanks of a shelf are meant. */
    private interface Meant {
        boolean holds(Rack rack, Shelf shelf);
    }

    private static Attempt of(Room room, TankId model, String where, Meant meant) {
        return Find.tank(room, model.text())
                .map(tank -> Edit.tried(
                        room,
                        "Same outlets on the " + where + " of " + Words.tank(tank),
                        before -> alike(before, model, meant)))
                .orElse(Refused.nothing("tank"));
    }

    private static Room alike(Room room, TankId id, Meant meant) {
        Optional<Tank> model = Find.tank(room, id.text());
        List<TankId> others = room.racks().stream()
                .flatMap(rack -> rack.shelves().stream().filter(shelf -> meant.holds(rack, shelf)))
                .flatMap(shelf -> shelf.tanks().stream())
                .map(Tank::id)
                .filter(each -> !each.equals(id))
                .toList();
        Copier copier = new Copier(room);
        Predicate<Tank> isOther = tank -> others.contains(tank.id());
        Room after = model.map(tank -> Each.tank(room, Each.where(isOther, other -> like(tank, other, copier))))
                .orElse(room);
        return Sweep.of(after);
    }

    private static Tank like(Tank model, Tank other, Copier copier) {
        List<Outlet> outlets = new ArrayList<>();
        for (int i = 0; i < model.outlets().size(); i++) {
            Outlet hung = new Clip.Hung(model.outlets().get(i), model.waterDepthM()).in(other.waterDepthM());
            Outlet copy = i < other.outlets().size()
                    ? like(hung, other.outlets().get(i))
                    : copier.outlet(hung, other.id().text());
            outlets.add(copy);
        }
        return other.withOutlets(outlets);
    }

    private static Outlet like(Outlet model, Outlet other) {
        OptionalDouble lengthM = other.airline().map(Outlet.Airline::lengthM).orElse(OptionalDouble.empty());
        OutletId id = other.id();
        Outlet same = new Outlet(
                id,
                model.device(),
                model.flow(),
                model.depthM(),
                model.airline(),
                model.valve().map(valve -> DropEdits.valve(other, valve.kind())),
                model.checkValve(),
                model.use(),
                model.essential(),
                other.tap());
        return DropEdits.tubed(same, lengthM);
    }
}
