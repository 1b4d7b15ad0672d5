package lungfish.roomfile;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lungfish.catalogue.AccessoryClass;
import lungfish.catalogue.AirlineSize;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.BatteryClass;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CheckValveClass;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.FittingClass;
import lungfish.catalogue.PipeSize;
import lungfish.catalogue.ValveClass;
import lungfish.json.Nearest;
import lungfish.json.Place;
import lungfish.json.Problems;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Run;

/** Every class that a part is of stands in the catalogue, or among the room's own. */
final class ClassChecks {
    private static final Set<AccessoryClass.Kind> FILTERS = EnumSet.of(AccessoryClass.Kind.INLET_FILTER);
    private static final Set<AccessoryClass.Kind> SILENCERS = EnumSet.complementOf(EnumSet.copyOf(FILTERS));

    private final Spots spots;
    private final Problems problems;
    private final List<String> devices;
    private final List<String> machines;
    private final List<String> airlines;
    private final List<String> valves;
    private final List<String> checkValves;
    private final List<String> pipes;
    private final List<String> fittings;
    private final List<String> batteries;
    private final List<String> batteryPumps;
    private final List<String> filters;
    private final List<String> silencers;

    ClassChecks(Spots spots, Catalogue catalogue, Problems problems) {
        this.spots = spots;
        this.problems = problems;
        Room room = spots.room();
        devices = both(Catalogue.ids(room.ownClasses().devices(), DeviceClass::id), ids(catalogue.devices()));
        machines = both(
                Catalogue.ids(room.ownClasses().blowers(), BlowerClass::id),
                Catalogue.ids(catalogue.blowers(), BlowerClass::id));
        airlines = Catalogue.ids(catalogue.airlines(), AirlineSize::id);
        valves = Catalogue.ids(catalogue.valves(), ValveClass::id);
        checkValves = both(List.of(Outlet.NO_CHECK_VALVE), Catalogue.ids(catalogue.checkValves(), CheckValveClass::id));
        pipes = Catalogue.ids(catalogue.pipes(), PipeSize::id);
        fittings = Catalogue.ids(catalogue.fittings(), FittingClass::id);
        batteries = Catalogue.ids(catalogue.batteries(), BatteryClass::id);
        batteryPumps = Catalogue.ids(catalogue.backupGear(BackupClass.Kind.BATTERY_PUMP), BackupClass::id);
        filters = accessories(catalogue, FILTERS);
        silencers = accessories(catalogue, SILENCERS);
    }

    void tell() {
        spots.outlets().forEach(this::outlet);
        spots.gangs()
                .forEach(
                        gang -> airline(gang.place().key("feeder"), gang.value().feeder()));
        spots.runs().forEach(this::run);
        spots.blowers().forEach(this::blower);
        spots.batteries()
                .forEach(battery -> known(
                        battery.place().key("kind"),
                        "battery",
                        Optional.of(battery.value().kind()),
                        batteries));
        known(
                Place.ROOT.key("backup").key("battery_pumps").key("kind"),
                "battery pump",
                spots.room().backup().batteryPumps().map(Backup.BatteryPumps::kind),
                batteryPumps);
    }

    private void outlet(Spot<Outlet> spot) {
        Outlet outlet = spot.value();
        known(spot.place().key("device"), "device", Optional.of(outlet.device()), devices);
        airline(spot.place().key("airline"), outlet.airline());
        known(spot.place().key("valve").key("kind"), "valve", outlet.valve().map(Outlet.Valve::kind), valves);
        known(spot.place().key("check_valve"), "check valve", outlet.checkValve(), checkValves);
    }

    private void airline(Place place, Optional<Outlet.Airline> airline) {
        known(place.key("size"), "airline size", airline.flatMap(Outlet.Airline::size), airlines);
    }

    private void run(Spot<Run> run) {
        known(run.place().key("size"), "pipe size", Optional.of(run.value().size()), pipes);
        run.inside("fittings", Run::fittings)
                .forEach(fitting -> known(
                        fitting.place().key("kind"),
                        "fitting",
                        Optional.of(fitting.value().kind()),
                        fittings));
    }

    private void blower(Spot<Blower> blower) {
        Place place = blower.place().key("fittings");
        Blower.Fittings fitted = blower.value().fittings();
        known(blower.place().key("machine"), "blower", blower.value().machine(), machines);
        known(place.key("inlet_filter"), "inlet filter", fitted.inletFilter(), filters);
        known(place.key("silencer"), "silencer", fitted.silencer(), silencers);
    }

    private void known(Place place, String what, Optional<String> id, List<String> allowed) {
        if (id.isPresent() && !id.get().isEmpty() && !allowed.contains(id.get())) {
            problems.add(place, "there is no " + what + " class \"" + id.get() + '"', Nearest.offer(id.get(), allowed));
        }
    }

    private static List<String> ids(List<DeviceClass> devices) {
        return Catalogue.ids(devices, DeviceClass::id);
    }

    private static List<String> accessories(Catalogue catalogue, Set<AccessoryClass.Kind> kinds) {
        return catalogue.accessories().stream()
                .filter(each -> kinds.contains(each.kind()))
                .map(AccessoryClass::id)
                .toList();
    }

    private static List<String> both(List<String> first, List<String> second) {
        return Stream.concat(first.stream(), second.stream()).distinct().toList();
    }
}
