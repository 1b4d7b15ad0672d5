package lungfish.air;

/**
 * The flow meter that every keeper owns: a jar filled with water, held upside down over the bubbles until it is full of
 * air.
 *
 * <p>Convention: when the jar is full its air has the pressure at its mouth and the temperature of the water; it holds
 * more free air than its volume by both. Vapour is left out, as everywhere in this model: bubbles take up 1.5 to 3 % of
 * vapour in warm water, so a real jar fills that much sooner.
 */
public final class JarFill {
    private JarFill() {}

    /**
     * Seconds to fill.
     *
     * @param jarM3 volume of the jar, above 0
     * @param mouthDepthM of the jar's mouth below the surface
     * @param room the air's free state
     * @param freeAirM3PerS flow, above 0
     */
    public static double seconds(double jarM3, double mouthDepthM, Water water, FreeAir room, double freeAirM3PerS) {
        return freeAirM3(jarM3, mouthDepthM, water, room) / freeAirM3PerS;
    }

    /** Flow of free air, m³/s, from the seconds that a jar took, above 0. */
    public static double freeAirM3PerS(double jarM3, double mouthDepthM, Water water, FreeAir room, double seconds) {
        return freeAirM3(jarM3, mouthDepthM, water, room) / seconds;
    }

    private static double freeAirM3(double jarM3, double mouthDepthM, Water water, FreeAir room) {
        double pressed = 1.0 + water.columnPa(mouthDepthM) / room.pressurePa();
        return jarM3 * pressed * room.temperatureK() / water.temperatureK();
    }
}
