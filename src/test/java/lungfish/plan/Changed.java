package lungfish.plan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.OwnClasses;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/** Rooms that differ from another in one thing. */
final class Changed {
    private Changed() {}

    /** With one outlet otherwise. */
    static Room outlet(Room room, OutletId which, UnaryOperator<Outlet> change) {
        return outlets(room, outlet -> List.of(outlet.id().equals(which) ? change.apply(outlet) : outlet));
    }

    /** With other outlets for each. */
    static Room outlets(Room room, Function<Outlet, List<Outlet>> change) {
        return racks(room, room.racks().stream().map(rack -> rack(rack, change)).toList());
    }

    private static Rack rack(Rack rack, Function<Outlet, List<Outlet>> change) {
        List<Shelf> shelves = rack.shelves().stream()
                .map(shelf -> new Shelf(
                        shelf.id(),
                        shelf.heightM(),
                        shelf.tanks().stream().map(tank -> tank(tank, change)).toList()))
                .toList();
        return rack.withShelves(shelves);
    }

    private static Tank tank(Tank tank, Function<Outlet, List<Outlet>> change) {
        return tank.withOutlets(tank.outlets().stream()
                .flatMap(outlet -> change.apply(outlet).stream())
                .toList());
    }

    /** With these racks for its own. */
    static Room racks(Room room, List<Rack> racks) {
        return with(room, racks, room.ownClasses());
    }

    /** With these classes of its own. */
    static Room own(Room room, OwnClasses own) {
        return with(room, room.racks(), own);
    }

    private static Room with(Room room, List<Rack> racks, OwnClasses own) {
        return new Room(
                room.name(),
                room.notes(),
                room.displayUnits(),
                room.shell(),
                room.climate(),
                room.supply(),
                room.wishes(),
                room.listener(),
                room.circuits(),
                racks,
                room.runs(),
                room.gangs(),
                room.blowers(),
                room.backup(),
                room.stirrers(),
                own,
                room.spreads());
    }

    /** The same outlet, its valve shut. */
    static Outlet shut(Outlet outlet) {
        return new Outlet(
                outlet.id(),
                outlet.device(),
                outlet.flow(),
                outlet.depthM(),
                outlet.airline(),
                outlet.valve().map(valve -> new Outlet.Valve(valve.kind(), OptionalDouble.of(0))),
                outlet.checkValve(),
                outlet.use(),
                outlet.essential(),
                outlet.tap());
    }

    /** The same outlet, its air release so deep. */
    static Outlet deep(Outlet outlet, double depthM) {
        return new Outlet(
                outlet.id(),
                outlet.device(),
                outlet.flow(),
                OptionalDouble.of(depthM),
                outlet.airline(),
                outlet.valve(),
                outlet.checkValve(),
                outlet.use(),
                outlet.essential(),
                outlet.tap());
    }

    /** A second outlet like it. */
    static Outlet twin(Outlet outlet) {
        return new Outlet(
                new OutletId(outlet.id().text() + "-twin"),
                outlet.device(),
                outlet.flow(),
                outlet.depthM(),
                outlet.airline(),
                outlet.valve(),
                outlet.checkValve(),
                outlet.use(),
                outlet.essential(),
                outlet.tap());
    }
}
