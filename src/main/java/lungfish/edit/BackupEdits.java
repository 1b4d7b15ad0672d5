package lungfish.edit;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import lungfish.catalogue.BackupClass;
import lungfish.room.Backup;
import lungfish.room.Backup.Alarm;
import lungfish.room.Backup.BatteryPumps;
import lungfish.room.Backup.Generator;
import lungfish.room.Backup.Inverter;
import lungfish.room.Backup.Shedding;
import lungfish.room.Backup.Standby;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/**
 * Edits of what keeps the air on when something fails: what there is, and what there is no longer. Batteries are edited by
 * {@link BatteryEdits}; single numbers are said by {@link BackupValues}.
 */
public final class BackupEdits {
    /** As it is said until the keeper says it better. */
    private static final Shedding SOMEHOW = new Shedding("A valve before the other outlets", "Whoever comes first");

    private static final int MOST = 1000;

    private BackupEdits() {}

    /** An inverter rated like one of the catalogue; or one of which nothing is known. */
    public static Attempt addInverter(Room room, Optional<BackupClass> like) {
        Inverter inverter = like.map(kind -> Inverter.UNKNOWN
                        .withRatedW(OptionalDouble.of(kind.ratedW()))
                        .withSurgeW(OptionalDouble.of(kind.surgeW()))
                        .withWave(Optional.of(Inverter.Wave.SINE)))
                .orElse(Inverter.UNKNOWN);
        return change(room, "Add an inverter", backup -> backup.withInverter(Optional.of(inverter)));
    }

    public static Attempt removeInverter(Room room) {
        return change(room, "Remove the inverter", backup -> backup.withInverter(Optional.empty()));
    }

    /** The shape of its voltage; empty: unknown. */
    public static Attempt wave(Room room, Optional<Inverter.Wave> wave) {
        return room.backup().inverter().isEmpty()
                ? Refused.because("There is no inverter.", "Add it first.")
                : change(
                        room,
                        "Set the wave of the inverter",
                        backup -> backup.withInverter(backup.inverter().map(each -> each.withWave(wave))));
    }

    /** A generator rated like one of the catalogue; or one of which nothing is known. */
    public static Attempt addGenerator(Room room, Optional<BackupClass> like) {
        Generator generator = like.map(kind -> Generator.UNKNOWN.withRatedW(OptionalDouble.of(kind.ratedW())))
                .orElse(Generator.UNKNOWN);
        return change(room, "Add a generator", backup -> backup.withGenerator(Optional.of(generator)));
    }

    public static Attempt removeGenerator(Room room) {
        return change(room, "Remove the generator", backup -> backup.withGenerator(Optional.empty()));
    }

    /** Battery pumps of this kind; as many as there were, or one. */
    public static Attempt pumps(Room room, BackupClass kind) {
        return change(room, "Set the battery pumps", backup -> {
            int many = backup.batteryPumps().map(BatteryPumps::count).orElse(1);
            return backup.withBatteryPumps(Optional.of(new BatteryPumps(kind.id(), many)));
        });
    }

    /** So many of them. */
    public static Attempt pumps(Room room, int many) {
        if (room.backup().batteryPumps().isEmpty()) {
            return Refused.because("There are no battery pumps.", "Add them first.");
        }
        return many >= 1 && many <= MOST
                ? change(
                        room,
                        "Set how many battery pumps",
                        backup -> backup.withBatteryPumps(
                                backup.batteryPumps().map(pumps -> new BatteryPumps(pumps.kind(), many))))
                : Refused.because(
                        "There cannot be " + many + " battery pumps.", "Type a number from 1 to " + MOST + ".");
    }

    public static Attempt removePumps(Room room) {
        return change(room, "Remove the battery pumps", backup -> backup.withBatteryPumps(Optional.empty()));
    }

    /** What starts a blower that stands by; empty: nothing is said of it, nor of how long it takes. */
    public static Attempt start(Room room, Optional<Standby.Start> start) {
        return change(
                room,
                "Set what starts the standby",
                backup -> backup.withStandby(start.map(that ->
                        new Standby(that, backup.standby().map(Standby::readyS).orElse(OptionalDouble.empty())))));
    }

    /** A low-pressure alarm, its setting unknown. */
    public static Attempt addAlarm(Room room) {
        return change(room, "Add an alarm", backup -> backup.withAlarm(Optional.of(new Alarm(OptionalDouble.empty()))));
    }

    /** The circuit that the alarm draws its power from; empty: unknown, or a battery of its own. */
    public static Attempt alarmCircuit(Room room, Optional<CircuitId> circuit) {
        if (room.backup().alarm().isEmpty()) {
            return Refused.because("There is no alarm.", "Add it first.");
        }
        return CircuitEdits.isThere(room, circuit)
                ? change(
                        room,
                        "Set the circuit of the alarm",
                        backup -> backup.withAlarm(backup.alarm().map(alarm -> alarm.on(circuit))))
                : Refused.nothing("circuit");
    }

    public static Attempt removeAlarm(Room room) {
        return change(room, "Remove the alarm", backup -> backup.withAlarm(Optional.empty()));
    }

    /** The room can be cut down to its essential outlets. */
    public static Attempt addShedding(Room room) {
        return change(room, "Add shedding", backup -> backup.withShedding(Optional.of(SOMEHOW)));
    }

    public static Attempt removeShedding(Room room) {
        return change(room, "Remove shedding", backup -> backup.withShedding(Optional.empty()));
    }

    /** The valve by which the room is cut down. */
    public static Attempt sheddingValve(Room room, String valve) {
        return shedding(room, valve, shedding -> new Shedding(valve, shedding.who()));
    }

    /** Who turns it. */
    public static Attempt sheddingWho(Room room, String who) {
        return shedding(room, who, shedding -> new Shedding(shedding.valve(), who));
    }

    private static Attempt shedding(Room room, String text, UnaryOperator<Shedding> change) {
        return Names.trouble(text)
                .<Attempt>map(trouble -> Refused.because("That is nothing to go by.", "Type one line of text."))
                .orElseGet(() -> change(
                        room,
                        "Set how the room is shed",
                        backup -> backup.withShedding(
                                Optional.of(change.apply(backup.shedding().orElse(SOMEHOW))))));
    }

    private static Attempt change(Room room, String done, UnaryOperator<Backup> change) {
        return Edit.tried(room, done, before -> before.withBackup(change.apply(before.backup())));
    }
}
