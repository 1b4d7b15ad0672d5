package lungfish.air;

/** The standard atmosphere of ISO 2533, below 11 km. */
public final class Atmosphere {
    /** Pressure at sea level, Pa (ISO 2533). */
    public static final double SEA_LEVEL_PA = 101325.0;

    private static final double LAPSE_PER_M = 2.25577e-5;
    private static final double EXPONENT = 5.25588;

    private Atmosphere() {}

    /**
     * Ambient pressure at an altitude: {@code 101325 (1 − 2.25577e-5 h)^5.25588}, ISO 2533.
     *
     * @param altitudeM above mean sea level (geopotential), −1000 to 11 000; negative below the sea
     * @return Pa, absolute
     */
    public static double pressurePa(double altitudeM) {
        return SEA_LEVEL_PA * Math.pow(1.0 - LAPSE_PER_M * altitudeM, EXPONENT);
    }
}
