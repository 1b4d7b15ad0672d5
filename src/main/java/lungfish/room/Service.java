package lungfish.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Something that was done to the air of the room, and when. It counts as done before what was read on the same day.
 *
 * @param outlets those that it was done to; none: all of the room
 * @param blower the one that it was done to; absent: all of the planned ones
 * @param note free text
 */
public record Service(
        ServiceId id,
        LocalDate on,
        Kind kind,
        List<OutletId> outlets,
        Optional<BlowerId> blower,
        Optional<String> note) {
    /** What is done to a room. */
    public enum Kind {
        /** The blower was new, and starts anew. */
        BLOWER_NEW,
        BLOWER_REBUILT,
        FILTER_CHANGED,
        DEVICE_CLEANED,
        DEVICE_EXCHANGED,
        CHECK_VALVE_EXCHANGED,
        /** Valves were set anew by jar and seconds. */
        VALVES_SET,
        LEAK_MENDED,
        /** The drain at the low point was opened. */
        DRAINED,
        /** Alarm, standby or battery was tried. */
        ALARM_TRIED
    }

    public Service {
        outlets = List.copyOf(outlets);
    }
}
