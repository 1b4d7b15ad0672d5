package lungfish.backup;

import static lungfish.room.Rooms.aBlower;
import static lungfish.room.Rooms.aRoom;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Backup;
import lungfish.room.BatteryId;
import lungfish.room.Circuit;
import lungfish.room.CircuitId;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** What hangs on one protected circuit fails together. */
final class CircuitsTest {
    private static final CircuitId HEAT = new CircuitId("heat");
    private static final CircuitId AIR = new CircuitId("air");

    private static Room room(Backup backup, CircuitId ofBlower) {
        return aRoom().with(new Circuit(HEAT, "Heaters", Optional.of(true), Optional.of(true)))
                .with(new Circuit(AIR, "Air", Optional.of(true), Optional.of(false)))
                .with(aBlower("b").circuit(ofBlower.text()))
                .with(backup)
                .build();
    }

    private static Backup chargedFrom(CircuitId circuit) {
        return Backup.NONE.withBatteries(List.of(new Backup.Battery(
                new BatteryId("one"),
                "lifepo4",
                1,
                12.8,
                360_000,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(circuit))));
    }

    private static Backup withAlarmOn(Optional<CircuitId> circuit) {
        return Backup.NONE.withAlarm(Optional.of(new Backup.Alarm(OptionalDouble.empty(), circuit)));
    }

    private static List<Code> codes(Room room) {
        return Circuits.of(room).stream().map(Finding::code).toList();
    }

    @Test
    void aBatteryChargedFromTheHeatersRunsDownUnseen() {
        assertThat(codes(room(chargedFrom(HEAT), AIR))).containsExactly(Code.CHARGER_WITH_HEATERS);
        assertThat(codes(room(chargedFrom(AIR), AIR))).isEmpty();
    }

    @Test
    void anAlarmOnTheBlowersCircuitIsTakenWithIt() {
        assertThat(codes(room(withAlarmOn(Optional.of(AIR)), AIR))).containsExactly(Code.ALARM_WITH_BLOWER);
        assertThat(codes(room(withAlarmOn(Optional.of(HEAT)), AIR))).isEmpty();
    }

    @Test
    void anAlarmOfWhichNothingIsSaidMayHaveABatteryOfItsOwn() {
        assertThat(codes(room(withAlarmOn(Optional.empty()), AIR))).isEmpty();
    }

    @Test
    void theBlowerAmongTheHeatersFailsWithThem() {
        assertThat(codes(room(Backup.NONE, HEAT))).containsExactly(Code.SHARED_CIRCUIT);
    }
}
