package lungfish.standing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.room.Blower;
import lungfish.room.CircuitId;
import lungfish.room.Room;

/** The blowers of the pipe as drawn. */
record Central(List<Blower> running, List<Blower> waiting) {
    static Central of(Room room) {
        return new Central(room.blowers(Blower.Role.PLANNED), room.blowers(Blower.Role.STANDBY));
    }

    /** How many run side by side as drawn; 0 where none is. */
    int count() {
        return running.stream().mapToInt(Blower::count).sum();
    }

    boolean hasStandby() {
        return count() > 0 && !waiting.isEmpty();
    }

    /** Whether it is said that no circuit feeds both a running blower and the one that waits. */
    boolean standbyIsApart() {
        return waiting.stream()
                .anyMatch(standby -> standby.circuit().isPresent()
                        && running.stream()
                                .allMatch(blower -> blower.circuit().isPresent()
                                        && !blower.circuit().equals(standby.circuit())));
    }

    /** Whether it is said that no circuit feeds all the running blowers. */
    boolean runningAreApart() {
        Stream<Optional<CircuitId>> circuits = running.stream().map(Blower::circuit);
        return running.stream().allMatch(blower -> blower.circuit().isPresent())
                && circuits.distinct().count() > 1;
    }
}
