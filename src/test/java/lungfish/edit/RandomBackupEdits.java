package lungfish.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.reason.Assumable;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.CircuitId;
import lungfish.room.Room;
import lungfish.room.Stirrer;
import lungfish.room.Tank;

/** Random edits of what lives in tanks, and of what keeps it alive when the air stops; some of them make no sense. */
final class RandomBackupEdits {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();
    private static final List<Optional<Boolean>> MAYBE =
            List.of(Optional.empty(), Optional.of(true), Optional.of(false));
    private static final List<String> FISH =
            List.of("", "20 rainbows, 8 g", "12 x Loach 2, 0.5 oz; 3 guppies,2g", "some fish", "0 carp, 1 kg");
    private static final List<String> LINES = List.of("The ball valve", " ", "a\nb");
    private static final List<Assumable> NUMBERS = List.of(
            Assumable.ALARM_OXYGEN,
            Assumable.DANGER_OXYGEN,
            Assumable.NOTICE,
            Assumable.MEND,
            Assumable.CHARGE_RATE,
            Assumable.GENERATOR_FUEL,
            Assumable.READY,
            Assumable.INVERTER_IDLE);

    static final List<BiFunction<AnyOf, Room, Attempt>> ALL = List.of(
            (any, room) -> ContentEdits.temperatureK(room, any.tanks(), any.maybe(280, 310)),
            (any, room) -> ContentEdits.salinity(room, any.tanks(), any.maybe(0, 0.04)),
            (any, room) -> ContentEdits.survivalS(room, any.tanks(), any.maybe(60, 1e6)),
            (any, room) -> ContentEdits.fish(
                    room, any.tanks(), List.of(new Tank.Fish("Guppy", any.below(30), any.number(0.001, 0.1)))),
            (any, room) -> ContentEdits.fish(
                    room, any.tanks(), any.one(FISH), RandomEdits.reader(room).quantities()),
            (any, room) -> ContentEdits.foodKg(room, any.tanks(), any.maybe(0, 0.01)),
            (any, room) -> ContentEdits.protein(room, any.tanks(), any.maybe(0.2, 0.5)),
            (any, room) -> ContentEdits.justFed(room, any.tanks(), any.one(MAYBE)),
            (any, room) -> StirrerEdits.stir(room, any.tanks(), any.maybeOne(List.of(Stirrer.Kind.values()))),
            (any, room) -> StirrerEdits.powerW(room, any.tanks(), any.maybe(2, 20)),
            (any, room) -> StirrerEdits.circuit(room, any.tanks(), Optional.of(circuit(any, room))),
            (any, room) -> BatteryEdits.add(room, any.one(CATALOGUE.batteries())),
            (any, room) -> BatteryEdits.remove(room, battery(any, room)),
            (any, room) -> BatteryEdits.kind(room, battery(any, room), any.one(CATALOGUE.batteries())),
            (any, room) -> BatteryEdits.count(room, battery(any, room), any.below(5)),
            (any, room) -> BatteryEdits.voltage(battery(any, room)).say(room, any.maybe(6, 50)),
            (any, room) -> BatteryEdits.capacity(battery(any, room)).say(room, any.maybe(1e4, 1e6)),
            (any, room) -> BatteryEdits.chargedFrom(room, battery(any, room), Optional.of(circuit(any, room))),
            (any, room) -> BackupEdits.addInverter(room, any.maybeOne(gear(BackupClass.Kind.INVERTER))),
            (any, room) -> BackupEdits.wave(room, any.maybeOne(List.of(Backup.Inverter.Wave.values()))),
            (any, room) -> BackupEdits.removeInverter(room),
            (any, room) -> BackupEdits.addGenerator(room, any.maybeOne(gear(BackupClass.Kind.GENERATOR))),
            (any, room) -> BackupEdits.removeGenerator(room),
            (any, room) -> BackupEdits.pumps(room, any.one(gear(BackupClass.Kind.BATTERY_PUMP))),
            (any, room) -> BackupEdits.pumps(room, any.below(5)),
            (any, room) -> BackupEdits.removePumps(room),
            (any, room) -> BackupEdits.start(room, any.maybeOne(List.of(Backup.Standby.Start.values()))),
            (any, room) -> BackupEdits.addAlarm(room),
            (any, room) -> BackupEdits.alarmCircuit(room, Optional.of(circuit(any, room))),
            (any, room) -> BackupEdits.removeAlarm(room),
            (any, room) -> BackupValues.ALARM_SET.say(room, any.maybe(500, 9000)),
            (any, room) -> BackupEdits.addShedding(room),
            (any, room) -> BackupEdits.removeShedding(room),
            (any, room) -> BackupEdits.sheddingValve(room, any.one(LINES)),
            (any, room) -> BackupEdits.sheddingWho(room, any.one(LINES)),
            (any, room) -> number(any).say(room, any.maybe(0.001, 0.006)),
            (any, room) -> number(any).say(room, any.maybe(1, 1e5)),
            (any, room) -> CircuitEdits.add(room),
            (any, room) -> CircuitEdits.remove(room, circuit(any, room)),
            (any, room) -> CircuitEdits.rename(room, circuit(any, room), any.one(LINES)),
            (any, room) -> CircuitEdits.protect(room, circuit(any, room), any.one(MAYBE)),
            (any, room) -> CircuitEdits.heaters(room, circuit(any, room), any.one(MAYBE)),
            (any, room) -> MachineEdits.circuit(room, any.blower(), Optional.of(circuit(any, room))));

    private RandomBackupEdits() {}

    private static List<BackupClass> gear(BackupClass.Kind kind) {
        return CATALOGUE.backupGear(kind);
    }

    private static OwnValue number(AnyOf any) {
        return OwnValues.of(any.one(NUMBERS), List.of(PartId.ROOM)).orElseThrow();
    }

    private static BatteryId battery(AnyOf any, Room room) {
        return any.oneOr(
                room.backup().batteries().stream().map(Backup.Battery::id).toList(), new BatteryId("no-battery"));
    }

    private static CircuitId circuit(AnyOf any, Room room) {
        return any.oneOr(room.circuits().stream().map(circuit -> circuit.id()).toList(), new CircuitId("no-circuit"));
    }
}
