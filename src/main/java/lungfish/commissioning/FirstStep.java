package lungfish.commissioning;

import java.util.Optional;
import lungfish.reason.PartId;

/**
 * One step of a first start.
 *
 * @param key as it is ticked in the log of the room; stays the same while the room has that part
 * @param where the outlet or the blower that it is about; absent: the room
 * @param running whether air is made meanwhile
 */
public record FirstStep(String key, Kind kind, Optional<PartId> where, boolean running, Reads reads) {
    /** What is done, in the order in which it comes. */
    public enum Kind {
        /** The cement has cured. */
        CURED,
        /** The outlets' valves are shut, the bleed wide open. */
        VALVES_SHUT,
        /** Every check valve points the way that the air goes. */
        CHECK_VALVES,
        /** The relief valve is fitted and set. */
        RELIEF,
        /** Mains: drip loop, residual current, dry hands. */
        POWER,
        GAUGE_ZERO,
        /** Air through the open pipe. */
        BLOWN_OUT,
        /** Soap on every joint, the bleed throttled. */
        LEAK_TEST,
        /** The gauge watched with the blower off. */
        LEAK_FALL,
        /** Airlines and devices hung on, valves at their coarse start. */
        DEVICES_ON,
        STARTED,
        /** The bleed turned until the gauge reads what is planned. */
        BLEED_FIRST,
        /** One outlet set by its jar. */
        VALVE,
        /** Every jar once more. */
        JARS_AGAIN,
        BLEED_LAST,
        STANDBY,
        ALARM_SET,
        ALARM_TEST,
        /** The first readings of the log. */
        BASELINE
    }

    /** The key by which it is ticked that an outlet was set by jar to its target. */
    public static String valveKey(String outlet) {
        return "valve:" + outlet;
    }

    static FirstStep still(String key, Kind kind, Reads reads) {
        return new FirstStep(key, kind, Optional.empty(), false, reads);
    }

    static FirstStep running(String key, Kind kind, Reads reads) {
        return new FirstStep(key, kind, Optional.empty(), true, reads);
    }

    FirstStep at(PartId that) {
        return new FirstStep(key, kind, Optional.of(that), running, reads);
    }
}
