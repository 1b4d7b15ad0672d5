package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Seat;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Where a keeper can say what the plan assumes. */
public final class OwnValues {
    private final List<PartId> where;

    private OwnValues(List<PartId> where) {
        this.where = where;
    }

    /**
     * The number that may be said instead of an assumption, of all these parts alike; empty where a room has no place for
     * one number: {@link #otherwise} tells what to do then.
     */
    public static Optional<OwnValue> of(Assumable key, List<PartId> where) {
        OwnValue ofRoom = RoomValues.BY_KEY.get(key);
        return ofRoom != null ? Optional.of(ofRoom) : new OwnValues(where).of(key);
    }

    private Optional<OwnValue> of(Assumable key) {
        return switch (key) {
            case WATER_ABOVE_BOTTOM -> depth();
            case OUTLET_TARGET -> target();
            case BATTERY_TEMPERATURE -> batteryTemperature();
            case BATTERY_WEAR -> batteryWear();
            case HOSE_LENGTH -> hose();
            case WALL_REDUCTION, DOOR_REDUCTION, DOOR_HEIGHT -> wall();
            case PUMP_AGE -> age();
            case PROTEIN ->
                tanks(
                        "Protein in the food",
                        Dimension.SHARE,
                        tank -> tank.feeding().map(Tank.Feeding::protein).orElse(OptionalDouble.empty()),
                        ContentEdits::protein);
            case FOOD_SHARE -> food();
            case READY ->
                Optional.of(
                        names(PartId.Kind.BLOWER).isEmpty()
                                ? BackupValues.GENERATOR_READY
                                : BackupValues.STANDBY_READY);
            default -> Optional.empty();
        };
    }

    /** How to say what no single number says; empty where nothing can be done. */
    public static String otherwise(Assumable key) {
        return switch (key) {
            case AIRLINE_SLACK -> "Say the length of an airline at its outlet.";
            case VALVE_OPENING -> "Say how far a valve is open at its outlet.";
            case VALVE_KIND -> "Choose the valve at the outlet.";
            case AIRLINE_SIZE -> "Choose the airline at the outlet.";
            case RACK_MASS_PER_SHELF -> "Say the empty weight of each rack.";
            case LISTENER_DISTANCE -> "Place the listener and the machines.";
            case BATTERY_TEMPERATURE, BATTERY_WEAR -> "It counts for the battery that is proposed.";
            case FOOD_SHARE -> "Say the food at each tank.";
            case PROTEIN -> "Say the protein with the food at each tank.";
            case COST_YEARS,
                    AIR_PATH_SHARE,
                    TAP_LOSS_FACTOR,
                    GANG_LOSS_FACTOR,
                    BLOWER_MTBF,
                    MAINS_FAILURES,
                    MAINS_OUTAGE -> "It is the same for every room.";
            default -> "";
        };
    }

    private Optional<OwnValue> depth() {
        return outlets("Depth of its release", Dimension.DEPTH, Outlet::depthM, OutletEdits::depthM);
    }

    private Optional<OwnValue> target() {
        return outlets("Target", Dimension.AIR_FLOW, outlet -> outlet.flow().targetM3PerS(), OutletEdits::target);
    }

    private Optional<OwnValue> batteryTemperature() {
        return battery(
                "Temperature of the battery",
                Dimension.TEMPERATURE,
                RoomValues.AIR_K,
                Backup.Battery::temperatureK,
                Backup.Battery::withTemperatureK);
    }

    private Optional<OwnValue> batteryWear() {
        return battery(
                "Capacity left in the battery",
                Dimension.SHARE,
                Limits.above(0, 1),
                Backup.Battery::wear,
                Backup.Battery::withWear);
    }

    private Optional<OwnValue> hose() {
        return blower(
                "Hose to the pipe",
                Dimension.LENGTH,
                blower -> blower.fittings().hoseM(),
                (room, id, si) -> MachineEdits.fit(room, id, fitted -> fitted.withHoseM(si)));
    }

    private Optional<OwnValue> wall() {
        return blower(
                "What the wall takes off its sound",
                Dimension.SOUND_LEVEL,
                blower -> blower.siting().wallDb(),
                MachineEdits::standOutside);
    }

    private Optional<OwnValue> age() {
        return blower("Age", Dimension.DURATION, Blower::ageS, MachineEdits::age);
    }

    private List<String> names(PartId.Kind kind) {
        return where.stream()
                .filter(part -> part.kind() == kind)
                .map(PartId::id)
                .toList();
    }

    private Optional<OwnValue> battery(
            String label,
            Dimension dimension,
            Limits limits,
            Function<Backup.Battery, OptionalDouble> now,
            BiFunction<Backup.Battery, OptionalDouble, Backup.Battery> with) {
        List<String> names = names(PartId.Kind.BATTERY);
        Predicate<Backup.Battery> meant = battery -> names.contains(battery.id().text());
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of(OwnValue.within(
                        label,
                        dimension,
                        limits,
                        room -> common(
                                room.backup().batteries().stream().filter(meant).map(now)),
                        (room, si) -> room.withBackup(room.backup()
                                .withBatteries(Each.changed(
                                        room.backup().batteries(),
                                        Each.where(meant, battery -> with.apply(battery, si)))))));
    }

    private interface OfMachine {
        Attempt say(Room room, BlowerId id, OptionalDouble si);
    }

    private interface OfOutlets {
        Attempt say(Room room, List<OutletId> ids, OptionalDouble si);
    }

    private Optional<OwnValue> blower(
            String label, Dimension dimension, Function<Blower, OptionalDouble> now, OfMachine say) {
        return names(PartId.Kind.BLOWER).stream()
                .findFirst()
                .map(name -> new OwnValue(
                        label,
                        dimension,
                        room -> Find.blower(room, name).map(now).orElse(OptionalDouble.empty()),
                        (room, si) -> say.say(room, new BlowerId(name), si)));
    }

    /** What is fed is said of one tank: several do not eat the same. */
    private Optional<OwnValue> food() {
        return tanks(
                        "Dry food a day",
                        Dimension.MASS,
                        tank -> tank.feeding().stream()
                                .mapToDouble(Tank.Feeding::kgPerDay)
                                .findFirst(),
                        ContentEdits::foodKg)
                .filter(value -> names(PartId.Kind.TANK).size() == 1);
    }

    private interface OfTanks {
        Attempt say(Room room, List<TankId> ids, OptionalDouble si);
    }

    private Optional<OwnValue> tanks(
            String label, Dimension dimension, Function<Tank, OptionalDouble> now, OfTanks say) {
        List<TankId> ids = names(PartId.Kind.TANK).stream().map(TankId::new).toList();
        return ids.isEmpty()
                ? Optional.empty()
                : Optional.of(new OwnValue(
                        label,
                        dimension,
                        room -> common(Find.tanks(room, ids).stream().map(now)),
                        (room, si) -> say.say(room, ids, si)));
    }

    private Optional<OwnValue> outlets(
            String label, Dimension dimension, Function<Outlet, OptionalDouble> now, OfOutlets say) {
        List<OutletId> ids =
                names(PartId.Kind.OUTLET).stream().map(OutletId::new).toList();
        return Optional.of(new OwnValue(
                label,
                dimension,
                room -> common(room.seats().stream()
                        .map(Seat::outlet)
                        .filter(outlet -> ids.contains(outlet.id()))
                        .map(now)),
                (room, si) -> say.say(room, ids, si)));
    }

    private static OptionalDouble common(Stream<OptionalDouble> each) {
        List<OptionalDouble> different = each.distinct().toList();
        return different.size() == 1 ? different.get(0) : OptionalDouble.empty();
    }
}
