package lungfish.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lungfish.reason.Assumable;

/** All classes of things one buys, and the values assumed where a room is silent. Immutable, loaded once. */
public record Catalogue(
        List<DeviceClass> devices,
        List<AirlineSize> airlines,
        List<ValveClass> valves,
        List<CheckValveClass> checkValves,
        List<PipeSize> pipes,
        List<FittingClass> fittings,
        List<BlowerClass> blowers,
        List<BatteryClass> batteries,
        List<AccessoryClass> accessories,
        List<TankSize> tankSizes,
        List<BackupClass> backupGear,
        BuildingClasses building,
        List<ServiceClass> services,
        Map<Assumable, AssumedValue> assumed) {
    public Catalogue {
        devices = List.copyOf(devices);
        airlines = List.copyOf(airlines);
        valves = List.copyOf(valves);
        checkValves = List.copyOf(checkValves);
        pipes = List.copyOf(pipes);
        fittings = List.copyOf(fittings);
        blowers = List.copyOf(blowers);
        batteries = List.copyOf(batteries);
        accessories = List.copyOf(accessories);
        tankSizes = List.copyOf(tankSizes);
        backupGear = List.copyOf(backupGear);
        services = List.copyOf(services);
        assumed = Map.copyOf(assumed);
    }

    public Optional<DeviceClass> device(String id) {
        return find(devices, DeviceClass::id, id);
    }

    public Optional<AirlineSize> airline(String id) {
        return find(airlines, AirlineSize::id, id);
    }

    public Optional<ValveClass> valve(String id) {
        return find(valves, ValveClass::id, id);
    }

    public Optional<CheckValveClass> checkValve(String id) {
        return find(checkValves, CheckValveClass::id, id);
    }

    public Optional<PipeSize> pipe(String id) {
        return find(pipes, PipeSize::id, id);
    }

    public Optional<FittingClass> fitting(String id) {
        return find(fittings, FittingClass::id, id);
    }

    public Optional<BlowerClass> blower(String id) {
        return find(blowers, BlowerClass::id, id);
    }

    public Optional<BatteryClass> battery(String id) {
        return find(batteries, BatteryClass::id, id);
    }

    public Optional<AccessoryClass> accessory(String id) {
        return find(accessories, AccessoryClass::id, id);
    }

    public Optional<TankSize> tankSize(String id) {
        return find(tankSizes, TankSize::id, id);
    }

    public Optional<BackupClass> backupGear(String id) {
        return find(backupGear, BackupClass::id, id);
    }

    /** How often something is done; each task stands in the catalogue once. */
    public ServiceClass service(ServiceClass.Task task) {
        return services.stream()
                .filter(each -> each.task() == task)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the catalogue has no service " + task));
    }

    /** The gear of one kind. */
    public List<BackupClass> backupGear(BackupClass.Kind kind) {
        return backupGear.stream().filter(each -> each.kind() == kind).toList();
    }

    /** The value assumed where a room does not give it. */
    public AssumedValue assumed(Assumable key) {
        AssumedValue value = assumed.get(key);
        if (value == null) {
            throw new IllegalStateException("the catalogue has no value for " + key);
        }
        return value;
    }

    private static <T> Optional<T> find(List<T> all, Function<T, String> id, String wanted) {
        return all.stream().filter(each -> id.apply(each).equals(wanted)).findFirst();
    }

    /** The ids of one list, for messages that say what may be written. */
    public static <T> List<String> ids(List<T> all, Function<T, String> id) {
        return all.stream().map(id).toList();
    }
}
