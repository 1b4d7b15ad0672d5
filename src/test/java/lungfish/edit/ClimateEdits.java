package lungfish.edit;

import java.util.OptionalDouble;

/** Edits that no gate has looked at: whatever a test wants to say of the air. */
public final class ClimateEdits {
    private ClimateEdits() {}

    /** The temperature of the room, K. */
    public static Edit temperatureK(OptionalDouble that) {
        return new Edit(
                "Change the room temperature",
                room -> room.withClimate(room.climate().withTemperatureK(that)));
    }

    /** The altitude of the room above the sea, m. */
    public static Edit altitudeM(OptionalDouble that) {
        return new Edit(
                "Change the altitude", room -> room.withClimate(room.climate().withAltitudeM(that)));
    }
}
