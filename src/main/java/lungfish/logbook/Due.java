package lungfish.logbook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalInt;
import lungfish.reason.PartId;

/**
 * Something that is to be done again.
 *
 * @param what its name
 * @param where the blower that it is done to; absent: the room
 * @param everyS from one time to the next
 * @param last when it was done; absent: never, as far as the log tells
 * @param due when it is to be done again; absent where the log tells no day to count from
 * @param outlets of how many outlets it is overdue; absent where it is not done to outlets
 */
public record Due(
        String what,
        Optional<PartId> where,
        double everyS,
        Optional<LocalDate> last,
        Optional<LocalDate> due,
        OptionalInt outlets) {
    /** What is due so soon is worth a word today: common practice, no source. */
    public static final int SOON_DAYS = 14;

    /** How it stands on a day. */
    public enum State {
        /** Nobody knows: nothing is in the log to count from. */
        UNKNOWN,
        OVERDUE,
        SOON,
        LATER
    }

    /** How it stands on a day. */
    public State state(LocalDate today) {
        if (due.isEmpty()) {
            return State.UNKNOWN;
        }
        long left = ChronoUnit.DAYS.between(today, due.get());
        return left < 0 ? State.OVERDUE : left <= SOON_DAYS ? State.SOON : State.LATER;
    }
}
