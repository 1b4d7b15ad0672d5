package lungfish.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.BlowerClass.CurvePoint;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.DeviceClass.Resistance;
import lungfish.plan.Plan;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.OwnClasses;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.room.Shelf;
import lungfish.room.Tank;

/**
 * The room with what was measured put in, so that every other question can be asked of it: its blower gives what it gives today,
 * less what leaks; devices take what they take. It is a room like any other; what was put in are classes of its own.
 */
public final class AsMeasured {
    private static final String MARK = "-as-measured";

    private final Plan plan;
    private final Fitted fitted;

    private AsMeasured(Plan plan, Fitted fitted) {
        this.plan = plan;
        this.fitted = fitted;
    }

    /**
     * The room of a plan as it was measured. Own classes bear the names of what they stand for, and say that they were measured.
     *
     * @param plan of the room, with its log
     */
    public static Room room(Plan plan, Fitted fitted) {
        AsMeasured measured = new AsMeasured(plan, fitted);
        Room room = measured.clogged(plan.room());
        return measured.blown(measured.resisting(room)).withName(plan.room().name() + ", as measured");
    }

    /** Classes of devices that take otherwise take the place of the catalogue's, under the same id. */
    private Room resisting(Room room) {
        List<DeviceClass> devices = new ArrayList<>(room.ownClasses().devices());
        for (Fitted.DeviceTakes takes : fitted.devices()) {
            plan.demand().needs().stream()
                    .map(need -> need.device())
                    .filter(device -> device.id().equals(takes.id()))
                    .findFirst()
                    .ifPresent(device -> put(devices, scaled(device, takes.factor())));
        }
        return room.withOwnClasses(new OwnClasses(devices, room.ownClasses().blowers()));
    }

    private static void put(List<DeviceClass> devices, DeviceClass device) {
        devices.removeIf(each -> each.id().equals(device.id()));
        devices.add(device);
    }

    private static DeviceClass scaled(DeviceClass device, double factor) {
        return with(
                device,
                device.id(),
                device.name(),
                resistance -> new Resistance(
                        factor * resistance.p0Pa(), factor * resistance.aPaSPerM3(), factor * resistance.bPaS2PerM6()));
    }

    private static DeviceClass with(DeviceClass device, String id, String name, UnaryOperator<Resistance> change) {
        return new DeviceClass(
                id,
                name,
                device.kind(),
                change.apply(device.clean()),
                change.apply(device.due()),
                device.leastM3PerS(),
                device.typicalM3PerS(),
                device.mostM3PerS(),
                device.bubbles(),
                device.uplift(),
                "measured in the room");
    }

    private Room clogged(Room room) {
        if (!(fitted.happening() instanceof Happening.Clog clog)) {
            return room;
        }
        return plan.demand().needs().stream()
                .filter(need -> need.id().equals(clog.id()))
                .findFirst()
                .map(need -> clogged(room, clog, need.device()))
                .orElse(room);
    }

    private Room clogged(Room room, Happening.Clog clog, DeviceClass device) {
        DeviceClass clogging = with(
                device,
                device.id() + MARK,
                device.name() + ", clogged",
                resistance -> new Resistance(
                        resistance.p0Pa(), resistance.aPaSPerM3() + fitted.clogPaSPerM3(), resistance.bPaS2PerM6()));
        List<DeviceClass> devices = new ArrayList<>(room.ownClasses().devices());
        put(devices, clogging);
        return each(room, outlet -> outlet.id().equals(clog.id()) ? outlet.withDevice(clogging.id()) : outlet)
                .withOwnClasses(new OwnClasses(devices, room.ownClasses().blowers()));
    }

    private static Room each(Room room, UnaryOperator<Outlet> change) {
        List<Rack> racks = new ArrayList<>();
        for (Rack rack : room.racks()) {
            List<Shelf> shelves = new ArrayList<>();
            for (Shelf shelf : rack.shelves()) {
                List<Tank> tanks = shelf.tanks().stream()
                        .map(tank -> tank.withOutlets(
                                tank.outlets().stream().map(change).toList()))
                        .toList();
                shelves.add(shelf.withTanks(tanks));
            }
            racks.add(rack.withShelves(shelves));
        }
        return room.withRacks(racks);
    }

    private Room blown(Room room) {
        BlowerClass kind = plan.duty().orElseThrow().candidate().kind();
        int machines = plan.duty().orElseThrow().candidate().fleet().machines();
        BlowerClass today = today(kind, machines);
        List<BlowerClass> blowers = new ArrayList<>(room.ownClasses().blowers());
        blowers.removeIf(each -> each.id().equals(today.id()));
        blowers.add(today);
        List<Blower> placed = room.blowers().stream()
                .map(blower -> isOfKind(blower, kind) ? blower.withMachine(Optional.of(today.id())) : blower)
                .toList();
        return room.withBlowers(placed)
                .withOwnClasses(new OwnClasses(room.ownClasses().devices(), blowers));
    }

    private static boolean isOfKind(Blower blower, BlowerClass kind) {
        return blower.role() == Blower.Role.PLANNED
                && blower.machine().map(kind.id()::equals).orElse(true);
    }

    /** What each machine gives into the pipe today; what it may lose until its rebuild is what is left of that. */
    private BlowerClass today(BlowerClass kind, int machines) {
        double share = fitted.blower().share();
        double tired = Math.min(1, kind.tiredShare() / share);
        List<CurvePoint> points = kind.points().stream()
                .map(point -> new CurvePoint(
                        point.gaugePa(), left(share * point.freeM3PerS(), point.gaugePa(), machines), point.watts()))
                .toList();
        return kind.measured(kind.id() + MARK, kind.name() + ", as measured", points, tired);
    }

    /** A hole passes by the root of the pressure. */
    private double left(double gives, double gaugePa, int machines) {
        double leaks = fitted.leakM3PerS() * Math.sqrt(Math.max(0, gaugePa) / fitted.setPa());
        return Math.max(0, gives - leaks / machines);
    }
}
