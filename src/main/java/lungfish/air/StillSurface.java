package lungfish.air;

import java.util.OptionalDouble;

/**
 * Oxygen through the surface of water that nothing stirs, and how long a tank lasts on it:
 * {@code dC/dt = (k A/V)(C_s − C) − R/V} (first-order balance of Streeter and Phelps 1925).
 */
public final class StillSurface {
    private static final double M_PER_S_OF_CM_PER_H = 0.01 / 3600.0;

    /** Likely transfer velocity at 20 °C: between the published ones for lakes without wind. */
    public static final double LIKELY_M_PER_S = 1.0 * M_PER_S_OF_CM_PER_H;

    /** Lowest published without wind: Crusius and Wanninkhof 2003, Limnology and Oceanography 48, pp. 1010–1017. */
    public static final double LOWEST_M_PER_S = 0.168 * M_PER_S_OF_CM_PER_H;

    /** Highest published without wind: Vachon and Prairie 2013. */
    public static final double HIGHEST_M_PER_S = 2.51 * M_PER_S_OF_CM_PER_H;

    /** Growth of transfer for each kelvin: ASCE/EWRI 2-06. */
    public static final double GROWTH_PER_KELVIN = 1.024;

    private static final double SCHMIDT_OF_K600 = 600.0;

    private StillSurface() {}

    /**
     * Schmidt number of oxygen in fresh water. Wanninkhof 1992, Journal of Geophysical Research 97, p. 7373, Table A1;
     * 0 to 30 °C.
     */
    public static double schmidt(double waterK) {
        double t = waterK - Air.ZERO_CELSIUS_K;
        return 1800.6 + t * (-120.10 + t * (3.7818 - t * 0.047608));
    }

    /** Transfer velocity of oxygen, m/s, from one at a Schmidt number of 600: {@code k600 (Sc/600)^-0.5}. */
    public static double velocityMPerS(double k600MPerS, double waterK) {
        return k600MPerS * Math.sqrt(SCHMIDT_OF_K600 / schmidt(waterK));
    }

    /** What a temperature does to a transfer known at another: {@code 1.024^(T−T0)}. */
    public static double warming(double waterK, double knownAtK) {
        return Math.pow(GROWTH_PER_KELVIN, waterK - knownAtK);
    }

    /**
     * Time until the oxygen has fallen to a limit.
     *
     * @param exchangeM3PerS transfer velocity times surface, {@code k A}, 0 or above
     * @param volumeM3 of the water
     * @param useGPerS oxygen used up
     * @param saturation g/m³
     * @param start g/m³ at time 0
     * @param limit g/m³
     * @return s, 0 when the start is not above the limit; empty when the surface alone keeps the water above it
     */
    public static OptionalDouble secondsUntil(
            double exchangeM3PerS, double volumeM3, double useGPerS, double saturation, double start, double limit) {
        if (start <= limit) {
            return OptionalDouble.of(0.0);
        }
        double rate = exchangeM3PerS / volumeM3;
        double fallAtLimit = useGPerS / volumeM3 - rate * (saturation - limit);
        if (fallAtLimit <= 0.0) {
            return OptionalDouble.empty();
        }
        // (1/rate) ln(fall at start / fall at limit), written so that a surface without exchange is its limit
        double x = rate * (start - limit) / fallAtLimit;
        double stretched = x == 0.0 ? 1.0 : Math.log1p(x) / x;
        return OptionalDouble.of((start - limit) / fallAtLimit * stretched);
    }
}
