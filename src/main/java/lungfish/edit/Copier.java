package lungfish.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Gang;
import lungfish.room.GangId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Rack;
import lungfish.room.RackId;
import lungfish.room.Room;
import lungfish.room.Run;
import lungfish.room.RunId;
import lungfish.room.Shelf;
import lungfish.room.ShelfId;
import lungfish.room.Tank;
import lungfish.room.TankId;

/**
 * Makes copies for a room: fresh ids, names of their own. What belongs to a place is not copied: a tap, the length of an
 * airline, how far a valve is open.
 */
final class Copier {
    private final Fresh rackIds;
    private final Fresh shelfIds;
    private final Fresh tankIds;
    private final Fresh outletIds;
    private final Fresh runIds;
    private final Fresh blowerIds;
    private final Fresh gangIds;
    private final Map<GangId, GangId> gangs = new HashMap<>();
    private final Set<String> rackNames;
    private final Set<String> tankNames;
    private final Set<String> runNames;
    private final Set<String> blowerNames;

    Copier(Room room) {
        rackIds = Fresh.racks(room);
        shelfIds = Fresh.shelves(room);
        tankIds = Fresh.tanks(room);
        outletIds = Fresh.outlets(room);
        runIds = Fresh.runs(room);
        blowerIds = Fresh.blowers(room);
        gangIds = Fresh.gangs(room);
        rackNames = Taken.rackNames(room);
        tankNames = Taken.tankNames(room);
        runNames = Taken.runNames(room);
        blowerNames = Taken.blowerNames(room);
    }

    Rack rack(Rack rack) {
        String id = rackIds.letter();
        List<Shelf> shelves = new ArrayList<>();
        rack.shelves().forEach(shelf -> shelves.add(shelf(shelf, id, shelf.heightM())));
        return new Rack(
                new RackId(id),
                name(rack.name(), rack.id().text(), id, rackNames),
                rack.stage(),
                rack.step(),
                rack.xM(),
                rack.yM(),
                rack.turn(),
                rack.widthM(),
                rack.depthM(),
                rack.ownMassKg(),
                shelves);
    }

    /** A copy for a rack, at a height of its own. */
    Shelf shelf(Shelf shelf, String rack, double heightM) {
        String id = shelfIds.numbered(rack);
        List<Tank> tanks = shelf.tanks().stream().map(tank -> tank(tank, id)).toList();
        return new Shelf(new ShelfId(id), heightM, tanks);
    }

    /** A copy for a shelf; it may stand on another one than its model. */
    Tank tank(Tank tank, String shelf) {
        String id = tankIds.numbered(shelf);
        Tank named = tank.named(name(tank.name(), tank.id().text(), id, tankNames));
        return new Tank(
                new TankId(id),
                named.name(),
                tank.kind(),
                tank.xM(),
                tank.outside(),
                tank.waterDepthM(),
                tank.temperatureK(),
                tank.salinityKgPerKg(),
                tank.survivalS(),
                tank.fish(),
                tank.feeding(),
                tank.justFed(),
                tank.outlets().stream().map(outlet -> outlet(outlet, id)).toList());
    }

    /** A copy for a tank. */
    Outlet outlet(Outlet outlet, String tank) {
        return new Outlet(
                new OutletId(outletIds.lettered(tank)),
                outlet.device(),
                outlet.flow(),
                outlet.depthM(),
                outlet.airline()
                        .flatMap(Outlet.Airline::size)
                        .map(size -> new Outlet.Airline(Optional.of(size), OptionalDouble.empty())),
                outlet.valve().map(valve -> new Outlet.Valve(valve.kind(), OptionalDouble.empty())),
                outlet.checkValve(),
                outlet.use(),
                outlet.essential(),
                outlet.tap().flatMap(this::copied));
    }

    /** Only a gang that was copied before. */
    private Optional<Outlet.Tap> copied(Outlet.Tap tap) {
        return tap instanceof Outlet.OnGang on
                ? Optional.ofNullable(gangs.get(on.gang())).map(Outlet.OnGang::new)
                : Optional.empty();
    }

    /** A copy that leaves the pipe at the nearest point; outlets of the model that are copied after it hang on it. */
    Gang gang(Gang gang) {
        GangId id = new GangId(gangIds.like(gang.id().text()));
        gangs.put(gang.id(), id);
        return new Gang(
                id,
                gang.kind(),
                gang.place(),
                Optional.empty(),
                gang.feeder()
                        .flatMap(Outlet.Airline::size)
                        .map(size -> new Outlet.Airline(Optional.of(size), OptionalDouble.empty())));
    }

    Run run(Run run) {
        String id = runIds.like(run.id().text());
        String name = name(run.name(), run.id().text(), id, runNames);
        return new Run(
                new RunId(id),
                name,
                run.role(),
                run.size(),
                run.closed(),
                run.points(),
                run.fittings(),
                run.surroundingsK());
    }

    /** A copy that feeds nothing yet and joins the pipe at the nearest point. */
    Blower blower(Blower blower) {
        String id = blowerIds.like(blower.id().text());
        String name = name(blower.name(), blower.id().text(), id, blowerNames);
        return new Blower(
                new BlowerId(id),
                name,
                blower.role(),
                blower.machine(),
                blower.count(),
                blower.siting(),
                blower.fittings(),
                blower.bleed(),
                blower.circuit(),
                blower.ageS(),
                List.of(),
                Optional.empty());
    }

    /** A name that holds the old id holds the new one; any other becomes the next in its row. */
    private static String name(String old, String oldId, String newId, Set<String> taken) {
        boolean holdsId = old.equals(oldId) || old.endsWith(" " + oldId);
        String wanted = holdsId ? old.substring(0, old.length() - oldId.length()) + newId : old;
        String name = Names.unique(wanted, taken);
        taken.add(name);
        return name;
    }
}
