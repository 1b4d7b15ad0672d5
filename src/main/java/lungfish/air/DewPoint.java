package lungfish.air;

/**
 * Temperature at which the moisture of air begins to settle: Magnus formula over water with the constants of the WMO Guide
 * to Instruments and Methods of Observation (WMO-No. 8), annex 4.B (from memory): {@code e = 6.112 hPa exp(17.62 t/(243.12
 * + t))}, t in °C.
 */
public final class DewPoint {
    private static final double A = 17.62;
    private static final double B_C = 243.12;
    private static final double AT_ZERO_PA = 611.2;

    private DewPoint() {}

    /**
     * The dew point of room air after it was compressed, its moisture with it: the vapour's pressure rises with the whole.
     *
     * @param temperatureK of the room, 228 to 333
     * @param humidity relative, above 0 to 1
     * @param pressureRatio absolute pressure in the pipe over that of the room, 1 or more
     * @return K
     */
    public static double dewPointK(double temperatureK, double humidity, double pressureRatio) {
        return ofVapourK(humidity * pressureRatio * saturationPa(temperatureK));
    }

    /** The most vapour that air of a temperature holds over water, as its pressure, Pa. */
    public static double saturationPa(double temperatureK) {
        double t = temperatureK - Air.ZERO_CELSIUS_K;
        return AT_ZERO_PA * Math.exp(A * t / (B_C + t));
    }

    /** The temperature at which vapour of a pressure, Pa, begins to settle, K. */
    public static double ofVapourK(double vapourPa) {
        double log = Math.log(vapourPa / AT_ZERO_PA);
        return Air.ZERO_CELSIUS_K + B_C * log / (A - log);
    }
}
