package lungfish.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * Brings a list of tanks into a room. Tanks of a rack that is there go into the gaps of its shelves; tanks of one that is
 * not get a new rack, as long as its fullest shelf, where the floor is free.
 */
public final class TankImport {
    private static final String RACK_UNSAID = "New rack";

    private Room room;

    private TankImport(Room room) {
        this.room = room;
    }

    /** The edit that brings these tanks in. */
    public static Attempt of(Room room, List<TankList.Item> items) {
        if (items.isEmpty()) {
            return Refused.because("The list holds no tank.", "Mend the cells that are told, or choose other columns.");
        }
        Map<String, List<TankList.Item>> byRack = new LinkedHashMap<>();
        items.forEach(item -> byRack.computeIfAbsent(item.rack().orElse(RACK_UNSAID), name -> new ArrayList<>())
                .add(item));
        TankImport work = new TankImport(room);
        for (Map.Entry<String, List<TankList.Item>> rack : byRack.entrySet()) {
            Optional<Refused> trouble = work.rack(rack.getKey(), rack.getValue());
            if (trouble.isPresent()) {
                return trouble.get();
            }
        }
        List<Rack> racks = work.room.racks();
        return Edit.tried(room, "Import " + Words.count(items.size(), "tank"), before -> before.withRacks(racks));
    }

    private Optional<Refused> rack(String name, List<TankList.Item> items) {
        Optional<Rack> there = room.racks().stream()
                .filter(rack -> rack.name().equalsIgnoreCase(name)
                        || Words.rack(rack).equalsIgnoreCase("rack " + name)
                        || rack.id().text().equalsIgnoreCase(name))
                .findFirst();
        return there.isPresent() ? into(there.get(), items) : make(name, items);
    }

    private Optional<Refused> into(Rack rack, List<TankList.Item> items) {
        for (TankList.Item item : items) {
            Rack now = Find.rack(room, rack.id().text()).orElseThrow();
            while (now.shelves().size() < item.shelf()) {
                Attempt shelf = ShelfEdits.add(room, now.id());
                if (shelf.refused().isPresent()) {
                    return shelf.refused();
                }
                room = shelf.edit().orElseThrow().of(room);
                now = Find.rack(room, rack.id().text()).orElseThrow();
            }
            ShelfId shelf = now.shelves().get(item.shelf() - 1).id();
            Attempt placed = Gaps.placed(room, shelf, List.of(tank(item, shelf)), "Import");
            if (placed.refused().isPresent()) {
                return placed.refused().map(refused -> atRow(refused, item));
            }
            room = placed.edit().orElseThrow().of(room);
        }
        return Optional.empty();
    }

    private static Refused atRow(Refused refused, TankList.Item item) {
        return new Refused("Row " + item.row() + ": " + refused.what(), refused.mend(), refused.amounts());
    }

    private Tank tank(TankList.Item item, ShelfId shelf) {
        TankId id = new TankId(Fresh.tanks(room).numbered(shelf.text()));
        List<Outlet> outlets = item
                .device()
                .map(kind -> TankMaker.outlet(new OutletId(Fresh.outlets(room).lettered(id.text())), kind))
                .stream()
                .toList();
        String name = Names.unique(item.name(), Taken.tankNames(room));
        return TankMaker.tank(id, name, 0, item.outside(), item.waterDepthM(), outlets)
                .withWater(item.temperatureK(), OptionalDouble.empty());
    }

    private Optional<Refused> make(String name, List<TankList.Item> items) {
        RackSize size = RackSize.of(items);
        Optional<FreeFloor.Spot> spot = FreeFloor.spot(room, size.widthM(), size.depthM());
        if (spot.isEmpty()) {
            return Optional.of(Refused.because(
                    "There is no free floor for a rack of {width} by {depth}.",
                    "Make the room larger, or draw the racks first.",
                    Refused.length("width", size.widthM()),
                    Refused.length("depth", size.depthM())));
        }
        String id = Fresh.racks(room).letter();
        Fresh shelfIds = Fresh.shelves(room);
        List<Shelf> shelves = size.heightsM().stream()
                .map(height -> new Shelf(new ShelfId(shelfIds.numbered(id)), height, List.of()))
                .toList();
        Rack rack = new Rack(
                new RackId(id),
                Names.unique(name, Taken.rackNames(room)),
                Rack.Stage.IN_PLACE,
                spot.get().xM(),
                spot.get().yM(),
                spot.get().turn(),
                size.widthM(),
                size.depthM(),
                OptionalDouble.empty(),
                shelves);
        room = RackDrawing.with(room, rack);
        return into(rack, items);
    }

    /** A rack that holds all its tanks: as long as the fullest shelf, as deep as the widest tank, a hand's room above each. */
    private record RackSize(double widthM, double depthM, List<Double> heightsM) {
        static RackSize of(List<TankList.Item> items) {
            int shelves = items.stream().mapToInt(TankList.Item::shelf).max().orElse(1);
            double widthM = 0;
            List<Double> heights = new ArrayList<>();
            double heightM = RackTemplate.LOWEST_M;
            for (int i = 1; i <= shelves; i++) {
                int number = i;
                List<TankList.Item> here =
                        items.stream().filter(item -> item.shelf() == number).toList();
                double lengthM = here.stream()
                        .mapToDouble(item -> item.outside().lengthM() + RackTemplate.GAP_M)
                        .sum();
                widthM = Math.max(widthM, lengthM + RackTemplate.GAP_M);
                heights.add(Metres.clean(heightM));
                heightM += RackTemplate.CLEARANCE_M
                        + here.stream()
                                .mapToDouble(item -> item.outside().heightM())
                                .max()
                                .orElse(RackTemplate.CLEARANCE_M);
            }
            double depthM = items.stream()
                    .mapToDouble(item -> item.outside().widthM())
                    .max()
                    .orElse(0);
            return new RackSize(Metres.clean(widthM), Metres.clean(depthM + RackTemplate.MARGIN_M), heights);
        }
    }
}
