package lungfish.backup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.room.Backup;
import lungfish.room.Blower;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** What fails together, because it hangs on one protected circuit: air with heat, charger with heat, bell with air. */
final class Circuits {
    private static final PartId ALARM = new PartId(PartId.Kind.ALARM, "");

    private final Room room;
    private final List<Finding> findings = new ArrayList<>();

    private Circuits(Room room) {
        this.room = room;
    }

    static List<Finding> of(Room room) {
        Circuits own = new Circuits(room);
        own.heated()
                .filter(own::feedsAir)
                .forEach(circuit -> own.findings.add(
                        Finding.of(Code.SHARED_CIRCUIT, circuit.id().part())));
        room.backup().batteries().forEach(own::charger);
        own.alarm();
        return own.findings;
    }

    private Stream<Circuit> heated() {
        return room.circuits().stream().filter(circuit -> circuit.feedsHeaters().orElse(false));
    }

    private boolean feedsAir(Circuit circuit) {
        return staying().stream().anyMatch(blower -> blower.circuit().equals(Optional.of(circuit.id())));
    }

    /** The pumps of today go when a blower is planned. */
    private List<Blower> staying() {
        List<Blower> staying = room.blowers().stream()
                .filter(blower -> blower.role() != Blower.Role.TODAY)
                .toList();
        return staying.isEmpty() ? room.blowers() : staying;
    }

    private void charger(Backup.Battery battery) {
        heated().filter(circuit -> battery.chargedFrom().equals(Optional.of(circuit.id())))
                .forEach(circuit -> findings.add(
                        Finding.of(Code.CHARGER_WITH_HEATERS, battery.id().part())
                                .with("circuit", circuit.name())));
    }

    private void alarm() {
        Optional<CircuitId> ofAlarm = room.backup().alarm().flatMap(Backup.Alarm::circuit);
        room.circuits().stream()
                .filter(circuit -> ofAlarm.equals(Optional.of(circuit.id())))
                .filter(this::feedsAir)
                .forEach(circuit ->
                        findings.add(Finding.of(Code.ALARM_WITH_BLOWER, ALARM).with("circuit", circuit.name())));
    }
}
