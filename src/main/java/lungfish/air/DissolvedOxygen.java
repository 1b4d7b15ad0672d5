package lungfish.air;

/**
 * Oxygen that water holds against moist air. Benson and Krause 1984 (Limnology and Oceanography 29, pp. 620–632) as used
 * by the USGS and Standard Methods 4500-O, 0 to 40 °C, 0 to 40 g/kg.
 */
public final class DissolvedOxygen {
    /** Share of oxygen in dry air by volume (US Standard Atmosphere 1976). */
    public static final double SHARE_OF_DRY_AIR = 0.20946;

    /** Salinity over chlorinity, definition of 1966 (UNESCO). */
    public static final double SALINITY_PER_CHLORINITY = 1.80655;

    private DissolvedOxygen() {}

    /**
     * Saturation at a pressure of moist air.
     *
     * @param ambientPa absolute, of the moist air over the water
     * @return g/m³, the same as mg/L
     */
    public static double saturationGPerM3(Water water, double ambientPa) {
        double atmospheres = ambientPa / Atmosphere.SEA_LEVEL_PA;
        double vapour = vapourAtmospheres(water.temperatureK());
        double theta = secondCoefficient(water.temperatureK() - Air.ZERO_CELSIUS_K);
        double dry = (atmospheres - vapour) / (1.0 - vapour);
        return atOneAtmosphere(water) * dry * (1.0 - theta * atmospheres) / (1.0 - theta);
    }

    /**
     * Concentration in balance with a partial pressure of oxygen, by Henry's law through the saturation.
     *
     * @return g/m³
     */
    public static double atPartialPressureGPerM3(Water water, double oxygenPa) {
        double vapourPa = vapourAtmospheres(water.temperatureK()) * Atmosphere.SEA_LEVEL_PA;
        return atOneAtmosphere(water) * oxygenPa / (SHARE_OF_DRY_AIR * (Atmosphere.SEA_LEVEL_PA - vapourPa));
    }

    private static double atOneAtmosphere(Water water) {
        double t = water.temperatureK();
        double fresh = -139.34411 + (1.575701e5 + (-6.642308e7 + (1.243800e10 - 8.621949e11 / t) / t) / t) / t;
        double salt = 0.017674 + (-10.754 + 2140.7 / t) / t;
        return Math.exp(fresh - water.salinityGPerKg() * salt);
    }

    private static double vapourAtmospheres(double t) {
        return Math.exp(11.8571 + (-3840.70 - 216961.0 / t) / t);
    }

    private static double secondCoefficient(double celsius) {
        return 0.000975 + celsius * (-1.426e-5 + celsius * 6.436e-8);
    }
}
