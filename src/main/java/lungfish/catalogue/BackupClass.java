package lungfish.catalogue;

/**
 * A class of gear that keeps air on when something fails. What a kind does not have is 0.
 *
 * @param ratedM3PerS air that a battery pump gives at its rated pressure, m³/s of free air
 * @param ratedPa that pressure, Pa gauge
 * @param runtimeS how long it runs: a battery pump on its own battery, a generator on one tank of fuel at about half load, s
 * @param ratedW what an inverter or a generator gives for ever, what a changeover switches; of a battery pump, what it draws, W
 * @param surgeW what it gives or bears for a moment, while a blower starts, W
 * @param price of one
 * @param lifeS until it is replaced, s
 */
public record BackupClass(
        String id,
        String name,
        Kind kind,
        double ratedM3PerS,
        double ratedPa,
        double runtimeS,
        double ratedW,
        double surgeW,
        double price,
        double lifeS,
        String source) {
    /** What it is. */
    public enum Kind {
        /** A small pump with a battery of its own, which starts by itself when the mains fail. */
        BATTERY_PUMP,
        /** Makes mains power from a battery. */
        INVERTER,
        GENERATOR,
        /** Starts a standby by itself. */
        CHANGEOVER,
        /** Rings when the pressure in the main falls, on a battery of its own. */
        ALARM,
        /** A ball valve with its tap, by which the room is cut down to its essential outlets. */
        SHED_VALVE
    }
}
