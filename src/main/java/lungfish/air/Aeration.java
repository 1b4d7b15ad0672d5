package lungfish.air;

/**
 * Oxygen that bubbles bring into a tank, by the method of ASCE/EWRI 2-06: what clean water without oxygen at 20 °C would
 * take, corrected to the tank.
 */
public final class Aeration {
    /** Share taken up for each metre of depth by coarse bubbles: wastewater handbooks, from memory, within 1.5 times. */
    public static final double COARSE_PER_M = 0.025;

    /** The same for fine bubbles over the whole floor: about 2 % a foot. */
    public static final double FINE_PER_M = 0.066;

    /** Oxygen in dry air by mass (US Standard Atmosphere 1976: 0.20946 · 31.9988/28.9644). */
    public static final double OXYGEN_BY_MASS = 0.2314;

    private static final double TEST_K = Air.ZERO_CELSIUS_K + 20.0;

    private Aeration() {}

    /** Oxygen in a mass flow of air, of the same unit. */
    public static double oxygenKgPerS(double airKgPerS) {
        return OXYGEN_BY_MASS * airKgPerS;
    }

    /** Transfer in the standard test, kg/s: oxygen brought times what a depth lets the water take. */
    public static double standardKgPerS(double airKgPerS, double sharePerM, double depthM) {
        return oxygenKgPerS(airKgPerS) * sharePerM * depthM;
    }

    /**
     * Transfer in a tank over transfer in the standard test: {@code α 1.024^(T−20) (β C_s − C)/C_s20}, C_s20 = 9.092 g/m³
     * at one atmosphere.
     *
     * @param oxygenGPerM3 in the water
     * @param ambientPa over it
     * @param alpha of its dirt, 0.8 to 0.9 for tank water (from memory), 1 for clean
     * @param beta of its salts, 0.95 to 1
     * @return dimensionless; below 0 where bubbles carry oxygen out
     */
    public static double fieldRatio(Water water, double oxygenGPerM3, double ambientPa, double alpha, double beta) {
        double here = DissolvedOxygen.saturationGPerM3(water, ambientPa);
        return perDeficit(water, alpha) * (beta * here - oxygenGPerM3);
    }

    /** The same for each g/m³ that the water is short of: {@code α 1.024^(T−20)/C_s20}, m³/g. */
    public static double perDeficit(Water water, double alpha) {
        double inTest = DissolvedOxygen.saturationGPerM3(Water.freshAt(TEST_K), Atmosphere.SEA_LEVEL_PA);
        return alpha * StillSurface.warming(water.temperatureK(), TEST_K) / inTest;
    }
}
