package lungfish.outage;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.backup.BatteryCourse;
import lungfish.backup.Habits;
import lungfish.catalogue.BackupClass;
import lungfish.catalogue.Catalogue;
import lungfish.reason.Assumption;
import lungfish.room.Backup;
import lungfish.room.Backup.Inverter;
import lungfish.room.Blower;
import lungfish.room.BlowerId;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** What arises from a failure in a room: when who does what, and what there is to go on with. */
final class Arising {
    private final Room room;
    private final Catalogue catalogue;
    private final Plant plant;
    private final Scene scene;
    private final Habits habits;

    Arising(Room room, Catalogue catalogue, Plant plant, Scene scene) {
        this.room = room;
        this.catalogue = catalogue;
        this.plant = plant;
        this.scene = scene;
        this.habits = new Habits(room, catalogue);
    }

    Moments moments() {
        Set<BlowerId> stopped = stopped();
        boolean mainsOff = takesAllPower();
        return new Moments(
                scene.what(),
                mainsOff || stopped.isEmpty() ? Set.of() : withStandbys(stopped),
                mainsOff,
                mainsOff && sheds() ? habits.noticeS() : Moments.NEVER,
                mainsOff && hasGenerator() ? habits.generatorS() : Moments.NEVER,
                stopped.isEmpty() || mainsOff ? Moments.NEVER : standbyS(),
                pumpsS(mainsOff, stopped),
                scene.backS().orElseGet(this::usualBackS));
    }

    /** A failed machine is exchanged, the mains stay away; all else a hand puts right. */
    private double usualBackS() {
        if (scene.what() instanceof Failing.Mains) {
            return Moments.NEVER;
        }
        return scene.what() instanceof Failing.BlowerStops ? habits.replacedS() : habits.handS();
    }

    private Set<BlowerId> stopped() {
        if (scene.what() instanceof Failing.BlowerStops stops) {
            return Set.of(stops.blower());
        }
        return scene.what() instanceof Failing.CircuitTrips trips ? on(trips.circuit()) : Set.of();
    }

    private Set<BlowerId> on(CircuitId circuit) {
        return room.blowers().stream()
                .filter(blower -> blower.circuit().equals(Optional.of(circuit)))
                .map(Blower::id)
                .filter(plant.blowers()::contains)
                .collect(Collectors.toSet());
    }

    /** The mains, or a circuit on which all blowers hang behind the batteries that it charges. */
    private boolean takesAllPower() {
        if (scene.what() instanceof Failing.CircuitTrips trips) {
            return on(trips.circuit()).equals(plant.blowers())
                    && room.backup().batteries().stream()
                            .anyMatch(battery -> battery.chargedFrom().equals(Optional.of(trips.circuit())));
        }
        return scene.what() instanceof Failing.Mains;
    }

    private double standbyS() {
        boolean itself = room.backup()
                .standby()
                .filter(each -> each.start() == Backup.Standby.Start.AUTOMATIC)
                .isPresent();
        return !hasStandby() ? Moments.NEVER : itself ? habits.standbyByItselfS() : habits.standbyByHandS();
    }

    /** One that does not hang on the circuit that has tripped. */
    private boolean hasStandby() {
        return room.blowers(Blower.Role.STANDBY).stream().anyMatch(each -> !hangsOnWhatTripped(each));
    }

    private boolean hangsOnWhatTripped(Blower blower) {
        return scene.what() instanceof Failing.CircuitTrips trips
                && blower.circuit().equals(Optional.of(trips.circuit()));
    }

    private Set<BlowerId> withStandbys(Set<BlowerId> stopped) {
        Set<BlowerId> all = new HashSet<>(stopped);
        room.blowers(Blower.Role.STANDBY).stream()
                .filter(this::hangsOnWhatTripped)
                .map(Blower::id)
                .forEach(all::add);
        return all;
    }

    /** What was assumed of what people do, once all else has been asked. */
    List<Assumption> assumptions() {
        return habits.assumptions();
    }

    /** Somebody is named who turns a valve that is there, and something is left on. */
    private boolean sheds() {
        return room.backup().shedding().isPresent() && plant.essentialWatts().isPresent();
    }

    Means means() {
        return new Means(
                new Charge(spans -> hasBattery() ? BatteryCourse.of(room, catalogue, spans) : Optional.empty()),
                takesAllPower() && hasGenerator() ? habits.fuelS() : 0,
                room.backup()
                        .batteryPumps()
                        .flatMap(pumps -> catalogue.backupGear(pumps.kind()))
                        .map(BackupClass::runtimeS)
                        .orElse(0.0));
    }

    /** Batteries whose inverter, as far as it is known, bears the blowers and their start. */
    private boolean hasBattery() {
        Inverter inverter = room.backup().inverter().orElse(Inverter.UNKNOWN);
        return !room.backup().batteries().isEmpty()
                && inverter.ratedW().orElse(Double.MAX_VALUE) >= plant.watts()
                && inverter.surgeW().orElse(Double.MAX_VALUE) >= plant.startingWatts();
    }

    private boolean hasGenerator() {
        return room.backup()
                .generator()
                .filter(each -> each.ratedW().orElse(Double.MAX_VALUE) >= plant.startingWatts())
                .isPresent();
    }

    /** They start by themselves when the mains fail; when a blower stops, a hand switches them on. */
    private double pumpsS(boolean mainsOff, Set<BlowerId> stopped) {
        if (room.backup().batteryPumps().isEmpty()) {
            return Moments.NEVER;
        }
        return mainsOff ? 0 : stopped.isEmpty() ? Moments.NEVER : habits.handS();
    }
}
