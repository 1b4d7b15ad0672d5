package lungfish.desktop;

import static lungfish.desktop.Properties.amount;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import lungfish.catalogue.Catalogue;
import lungfish.desktop.BackupPart.Adding;
import lungfish.desktop.BackupPart.Thing;
import lungfish.edit.Attempt;
import lungfish.edit.BackupEdits;
import lungfish.edit.BackupValues;
import lungfish.edit.CircuitEdits;
import lungfish.edit.RoomValues;
import lungfish.plan.Plan;
import lungfish.reason.Assumable;
import lungfish.reason.Code;
import lungfish.room.Backup;
import lungfish.room.Circuit;
import lungfish.room.Room;

/** How a failure is noticed and what is done then, when it is called one, and the circuits that fail together. */
final class BackupHabits {
    private final Room room;
    private final Catalogue catalogue;
    private final Consumer<Attempt> does;

    BackupHabits(Room room, Catalogue catalogue, Consumer<Attempt> does) {
        this.room = room;
        this.catalogue = catalogue;
        this.does = does;
    }

    List<BackupPart> all() {
        return List.of(alarm(), times(), shedding(), levels(), circuits());
    }

    private BackupPart alarm() {
        return BackupParts.one(
                "Low-pressure alarm",
                "None: nobody hears that the air is off.",
                room.backup().alarm().isPresent(),
                () -> List.of(
                        amount("Rings at", BackupValues.ALARM_SET, Property.Usual.words("not known")),
                        Properties.circuit(
                                "Power from",
                                "its own battery, or not known",
                                room,
                                now -> new Property.Said<>(
                                        List.of(now.backup().alarm().flatMap(Backup.Alarm::circuit))),
                                BackupEdits::alarmCircuit)),
                BackupEdits::removeAlarm,
                adding("Add an alarm", BackupEdits::addAlarm),
                EnumSet.of(Code.ALARM_MISSING, Code.ALARM_SET_WRONG, Code.ALARM_WITH_BLOWER));
    }

    private BackupPart times() {
        return fixed(
                "How long it takes",
                List.of(
                        amount(
                                "Noticed after",
                                BackupValues.NOTICE,
                                new Property.Usual(
                                        "assumed",
                                        "",
                                        plan -> new Property.Said<>(List.of(Optional.of(noticedS(plan)))))),
                        amount("Mended after", BackupValues.MEND, assumed(Assumable.MEND))),
                Set.of());
    }

    private double noticedS(Plan plan) {
        boolean rings = plan.room().backup().alarm().isPresent();
        return catalogue
                .assumed(rings ? Assumable.NOTICE_ALARM : Assumable.NOTICE)
                .si();
    }

    private BackupPart shedding() {
        return BackupParts.one(
                "Shedding",
                "Not said: how the room is cut down to its essential outlets.",
                room.backup().shedding().isPresent(),
                () -> List.of(
                        line("Valve that is turned", Backup.Shedding::valve, BackupEdits::sheddingValve),
                        line("Who turns it", Backup.Shedding::who, BackupEdits::sheddingWho)),
                BackupEdits::removeShedding,
                adding("Say how", BackupEdits::addShedding),
                EnumSet.of(Code.ESSENTIALS_NOT_MARKED));
    }

    private static Property line(
            String label,
            Function<Backup.Shedding, String> now,
            java.util.function.BiFunction<Room, String, Attempt> say) {
        return new Property.Words(
                label,
                "in a few words",
                room -> new Property.Said<>(List.of(room.backup().shedding().map(now))),
                say);
    }

    private BackupPart levels() {
        return fixed(
                "What is wished for",
                List.of(
                        amount("Time on battery", RoomValues.RUNTIME, assumed(Assumable.RUNTIME)),
                        amount("Alarm at oxygen of", RoomValues.ALARM_OXYGEN, assumed(Assumable.ALARM_OXYGEN)),
                        amount("Danger below oxygen of", RoomValues.DANGER_OXYGEN, assumed(Assumable.DANGER_OXYGEN))),
                Set.of());
    }

    private BackupPart circuits() {
        return new BackupPart(
                "Protected circuits",
                "None is known. What hangs on one circuit fails together.",
                room.circuits().stream().map(BackupHabits::circuit).toList(),
                adding("Add a circuit", CircuitEdits::add),
                EnumSet.of(Code.SHARED_CIRCUIT, Code.RESIDUAL_CURRENT, Code.NO_RESIDUAL_CURRENT));
    }

    private static Thing circuit(Circuit circuit) {
        return new Thing(
                circuit.id().text(),
                circuit.name(),
                List.of(
                        new Property.Words(
                                "Name",
                                said(circuit, each -> Optional.of(each.name())),
                                (now, name) -> CircuitEdits.rename(now, circuit.id(), name)),
                        Properties.yesOrNo(
                                "Has an RCD or GFCI",
                                "not known",
                                said(circuit, Circuit::residualCurrentProtected),
                                (now, that) -> CircuitEdits.protect(now, circuit.id(), that)),
                        Properties.yesOrNo(
                                "Feeds heaters",
                                "not known",
                                said(circuit, Circuit::feedsHeaters),
                                (now, that) -> CircuitEdits.heaters(now, circuit.id(), that))),
                Optional.of(now -> CircuitEdits.remove(now, circuit.id())));
    }

    private static <V> Function<Room, Property.Said<V>> said(Circuit circuit, Function<Circuit, Optional<V>> says) {
        return now ->
                Properties.said(now.circuits().stream().filter(each -> each.id().equals(circuit.id())), says);
    }

    private static BackupPart fixed(String title, List<Property> fields, Set<Code> found) {
        return new BackupPart(
                title, "", List.of(new Thing(title, "", fields, Optional.empty())), Optional.empty(), found);
    }

    private Optional<Adding> adding(String words, Function<Room, Attempt> adds) {
        return Optional.of(new Adding(words, List.of(new Choice.Named<>("", () -> does.accept(adds.apply(room))))));
    }

    private Property.Usual assumed(Assumable key) {
        return Property.Usual.of("assumed", catalogue.assumed(key).si());
    }
}
