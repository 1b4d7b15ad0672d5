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

    /** The same air, this warm; empty: unknown. */
    public Climate withTemperatureK(OptionalDouble that) {
        return new Climate(that, humidity, altitudeM, coldestPipeK);
    }

    /** The same air, as damp as this; empty: unknown. */
    public Climate withHumidity(OptionalDouble that) {
        return new Climate(temperatureK, that, altitudeM, coldestPipeK);
    }

    /** The same air, and the coldest place that the main passes; empty: unknown. */
    public Climate withColdestPipeK(OptionalDouble that) {
        return new Climate(temperatureK, humidity, altitudeM, that);
    }

    /** The same air, this high; empty: unknown. */
    public Climate withAltitudeM(OptionalDouble that) {
        return new Climate(temperatureK, humidity, that, coldestPipeK);
    }
}
