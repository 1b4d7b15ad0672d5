package lungfish.outage;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.room.CircuitId;
import lungfish.room.Stirrer;
import lungfish.room.StirrerId;
import lungfish.room.Tank;

/** What stirs the tanks of a room beside the air. */
record Stirring(List<Stirrer> stirrers) {
    /** Those that run. No stirrer hangs on a battery. */
    Set<StirrerId> running(boolean mainsOff, Optional<CircuitId> tripped) {
        return stirrers.stream()
                .filter(stirrer -> !mainsOff)
                .filter(stirrer -> tripped.isEmpty() || !stirrer.circuit().equals(tripped))
                .map(Stirrer::id)
                .collect(Collectors.toSet());
    }

    /** Whether any of these moves the water of a tank. */
    boolean moves(Tank tank, Set<StirrerId> running) {
        return stirrers.stream()
                .anyMatch(stirrer -> stirrer.tank().equals(tank.id()) && running.contains(stirrer.id()));
    }
}
