package lungfish.standing;

import java.util.OptionalDouble;

/**
 * One cause that takes several machines at once, so that no second machine helps.
 *
 * @param tanks that lose their air by it, at the worst
 * @param sPerYear time a year, after what batteries and a generator carry; known of the mains only
 */
public record Common(Cause cause, int tanks, OptionalDouble sPerYear) {
    /** The causes. */
    public enum Cause {
        MAINS,
        /** One circuit, one plug strip. */
        CIRCUIT,
        /** The one pipe that all share. */
        PIPE
    }
}
