package lungfish.everyday;

import java.util.Set;
import lungfish.room.OutletId;

/**
 * Something that happens in a fish room every week or so, and to which outlets.
 *
 * @param outlets those that it happens to; empty where it happens to the blower
 */
public record Disturbance(Kind kind, Set<OutletId> outlets) {
    /** The kinds, in the order in which a keeper meets them. */
    public enum Kind {
        /** The water of their tanks sinks by half, and every outlet there sits that much shallower. */
        HALF_DRAIN,
        /** Their devices come back clean, those of the others are due for cleaning. */
        CLEANED,
        /** Their devices become due for cleaning, those of the others were just cleaned. */
        DUE,
        /** Those that run only sometimes are shut. */
        HATCHERY_OFF,
        /** Those that run only sometimes come on. */
        HATCHERY_ON,
        /** An airline slips off its device: valve and airline blow into the room. */
        AIRLINE_OFF,
        /** Their valves are shut. */
        SHUT,
        /** The mains give a tenth less voltage: {@link lungfish.blower.LowMains}. */
        MAINS_LOW,
        /** The inlet filters are clogged: {@link lungfish.blower.Accessories#CLOGGED}. */
        FILTER_CLOGGED;

        /** Whether it happens to the blower, and so to the whole room. */
        public boolean isOfBlower() {
            return this == MAINS_LOW || this == FILTER_CLOGGED;
        }

        /** Whether it happens to those that run only sometimes, whatever else is meant. */
        public boolean isOfHatchery() {
            return this == HATCHERY_OFF || this == HATCHERY_ON;
        }

        /** Whether those that it happens to are meant to get nothing. */
        public boolean isShutting() {
            return this == HATCHERY_OFF || this == SHUT;
        }

        /** Whether what those take that it happens to makes no bubbles in their tanks. */
        public boolean isWithoutBubbles() {
            return isShutting() || this == AIRLINE_OFF;
        }
    }

    public Disturbance {
        outlets = Set.copyOf(outlets);
    }
}
