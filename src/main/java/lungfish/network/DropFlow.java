package lungfish.network;

import java.util.OptionalDouble;

/**
 * What one drop takes.
 *
 * @param freeM3PerS free air, 0 or more
 * @param tapGaugePa pressure at its tap
 * @param opensAtGaugePa the tap's pressure at or below which it is closed
 * @param overTarget flow over target; absent without a target, or with a target of nothing
 * @param state against its target
 */
public record DropFlow(
        double freeM3PerS, double tapGaugePa, double opensAtGaugePa, OptionalDouble overTarget, State state) {
    /** How a drop stands against its target. */
    public enum State {
        /** It takes no air at all. */
        CLOSED,
        /** Less than its target by more than the served band. */
        STARVED,
        /** Within the served band of its target, or open with no target. */
        SERVED,
        /** More than its target by more than the served band. */
        GREEDY
    }
}
