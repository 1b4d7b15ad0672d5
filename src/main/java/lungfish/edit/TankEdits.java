package lungfish.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import lungfish.catalogue.TankSize;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Edits of tanks: where they stand, their sizes and their water. What lives in them: {@link ContentEdits}. */
public final class TankEdits {
    /** Of the height of a tank, above its water: common practice, no source. */
    private static final double RIM_SHARE = 0.1;

    private TankEdits() {}

    /** A tank of a common size in the first gap of a shelf; with one device where one is named. */
    public static Attempt add(Room room, ShelfId shelf, TankSize size, Optional<String> device) {
        return add(room, shelf, outside(size), size.waterDepthM(), device);
    }

    /** The outside of a tank of a common size. */
    public static Tank.Size outside(TankSize size) {
        return new Tank.Size(size.lengthM(), size.widthM(), size.heightM());
    }

    /** How deep the water usually is in a tank of this height, m, where nothing else is said. */
    public static double usualWaterM(double heightM) {
        return Metres.clean(heightM * (1 - RIM_SHARE));
    }

    /** A tank of any size in the first gap of a shelf, filled to a depth, m; with one device where one is named. */
    public static Attempt add(
            Room room, ShelfId shelf, Tank.Size outside, double waterDepthM, Optional<String> device) {
        return Gaps.placed(room, shelf, List.of(made(room, shelf, outside, waterDepthM, device)), "Add a tank");
    }

    private static Tank made(Room room, ShelfId shelf, Tank.Size outside, double waterDepthM, Optional<String> device) {
        TankId id = new TankId(Fresh.tanks(room).numbered(shelf.text()));
        List<Outlet> outlets = device.stream()
                .map(kind -> TankMaker.outlet(new OutletId(Fresh.outlets(room).lettered(id.text())), kind))
                .toList();
        String name = Names.unique("Tank " + id, Taken.tankNames(room));
        return TankMaker.tank(id, name, 0, Metres.clean(outside), Metres.clean(waterDepthM), outlets);
    }

    /** The same, its left side that far from the left end of the shelf, m. */
    public static Attempt addAt(
            Room room, ShelfId shelf, double xM, Tank.Size outside, double waterDepthM, Optional<String> device) {
        return Edit.tried(room, "Add a tank", before -> {
            Tank tank = made(before, shelf, outside, waterDepthM, device).atXM(Metres.clean(xM));
            return Each.shelf(before, Each.where(each -> each.id().equals(shelf), each -> Gaps.with(each, tank)));
        });
    }

    /** Slides tanks along their shelves by so much, m; to the right is positive. */
    public static Attempt slide(Room room, Collection<TankId> ids, double alongM) {
        return placed(
                room,
                ids,
                "Move ",
                tank -> ids.contains(tank.id()) ? tank.atXM(Metres.clean(tank.xM() + alongM)) : tank);
    }

    /** Puts the left side of a tank that far from the left end of its shelf, m. */
    public static Attempt place(Room room, TankId id, double xM) {
        return placed(room, List.of(id), "Move ", tank -> tank.id().equals(id) ? tank.atXM(xM) : tank);
    }

    private static Attempt placed(Room room, Collection<TankId> ids, String verb, UnaryOperator<Tank> change) {
        List<Tank> tanks = Find.tanks(room, ids);
        return tanks.isEmpty()
                ? Refused.nothing("tank")
                : Edit.tried(
                        room,
                        verb + Words.tanks(tanks),
                        before -> Each.shelf(before, shelf -> {
                            List<Tank> after = Each.changed(shelf.tanks(), change);
                            return after.equals(shelf.tanks()) ? shelf : sorted(shelf.withTanks(after));
                        }));
    }

    private static Shelf sorted(Shelf shelf) {
        return shelf.withTanks(Gaps.fromLeft(shelf));
    }

    /** Puts a tank on another shelf, its left side that far from the left end, m. */
    public static Attempt carry(Room room, TankId id, ShelfId to, double xM) {
        return carried(room, id, to, tank -> OptionalDouble.of(xM));
    }

    /** Puts a tank into the first gap of another shelf. */
    public static Attempt carry(Room room, TankId id, ShelfId to) {
        Optional<Rack> rack = Find.rackOfShelf(room, to.text());
        Optional<Shelf> shelf = Find.shelf(room, to.text());
        if (rack.isEmpty() || shelf.isEmpty()) {
            return Refused.nothing("shelf");
        }
        Shelf others = shelf.get()
                .withTanks(Each.kept(shelf.get().tanks(), tank -> !tank.id().equals(id)));
        double widthM = rack.get().widthM();
        return carried(
                room, id, to, tank -> Gaps.first(others, widthM, tank.outside().lengthM()));
    }

    private static Attempt carried(Room room, TankId id, ShelfId to, Function<Tank, OptionalDouble> at) {
        Optional<Tank> tank = Find.tank(room, id.text());
        Optional<Rack> rack = Find.rackOfShelf(room, to.text());
        if (tank.isEmpty() || rack.isEmpty()) {
            return Refused.nothing("tank");
        }
        OptionalDouble xM = at.apply(tank.get());
        return xM.isEmpty()
                ? Gaps.full(rack.get(), tank.get())
                : Edit.tried(
                        room, "Move " + Words.tank(tank.get()), before -> carried(before, id, to, xM.getAsDouble()));
    }

    private static Room carried(Room room, TankId id, ShelfId to, double xM) {
        return Find.tank(room, id.text())
                .map(tank -> Each.shelf(
                        Each.tanks(
                                room,
                                tanks -> Each.kept(tanks, each -> !each.id().equals(id))),
                        Each.where(shelf -> shelf.id().equals(to), shelf -> Gaps.with(shelf, tank.atXM(xM)))))
                .orElse(room);
    }

    /** Another size; tanks beside it stay, and so must fit. The water stays as deep, or fills it as far below the rim where it is lower now. */
    public static Attempt resize(Room room, Collection<TankId> ids, Tank.Size outside) {
        return change(room, ids, "Resize ", tank -> resized(tank, outside));
    }

    private static Tank resized(Tank tank, Tank.Size outside) {
        double fullM = outside.heightM() - (tank.outside().heightM() - tank.waterDepthM());
        boolean fits = tank.waterDepthM() <= outside.heightM() || fullM <= 0;
        Tank filled = fits ? tank : Depths.filled(tank, Metres.clean(fullM));
        return filled.sized(outside);
    }

    /** Fills tanks to a depth, m. Devices stay where they stand, so their releases lie that much deeper or shallower. */
    public static Attempt fill(Room room, Collection<TankId> ids, double waterDepthM) {
        return change(room, ids, "Set the water of ", tank -> Depths.filled(tank, waterDepthM));
    }

    public static Attempt rename(Room room, TankId id, String name) {
        Optional<Refused> trouble = Names.trouble(name);
        return trouble.isPresent() ? trouble.get() : change(room, List.of(id), "Rename ", tank -> tank.named(name));
    }

    /** A tank, or a cone or tumbler of eggs. */
    public static Attempt makeKind(Room room, Collection<TankId> ids, Tank.Kind kind) {
        return change(room, ids, "Change ", tank -> tank.as(kind));
    }

    static Attempt change(Room room, Collection<TankId> ids, String verb, UnaryOperator<Tank> change) {
        List<Tank> tanks = Find.tanks(room, ids);
        return tanks.isEmpty()
                ? Refused.nothing("tank")
                : Edit.tried(
                        room,
                        verb + Words.tanks(tanks),
                        before -> Each.tank(before, Each.where(tank -> ids.contains(tank.id()), change)));
    }
}
