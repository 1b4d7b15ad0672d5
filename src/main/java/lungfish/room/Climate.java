package lungfish.room;

import java.util.OptionalDouble;

/**
 * The air of the room.
 *
 * @param humidity relative, 0 to 1
 * @param coldestPipeK the coldest place that the main passes, where water may gather
 */
public record Climate(
        OptionalDouble temperatureK, OptionalDouble humidity, OptionalDouble altitudeM, OptionalDouble coldestPipeK) {
    /** Nothing is known. */
    public static final Climate UNKNOWN =
            new Climate(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
