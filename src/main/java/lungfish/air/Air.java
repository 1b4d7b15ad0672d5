package lungfish.air;

/** Properties of dry air as an ideal gas. Temperatures are absolute, pressures are absolute. */
public final class Air {
    /** Specific gas constant of dry air, J/(kg K): 8314.32 / 28.9644 (US Standard Atmosphere 1976). */
    public static final double GAS_CONSTANT_J_PER_KG_K = 287.05;

    /** Ratio of the specific heats of air, dimensionless: the usual 1.4 of a diatomic gas. */
    public static final double HEAT_RATIO = 1.4;

    /** 0 °C in kelvin, by definition of the Celsius scale. */
    public static final double ZERO_CELSIUS_K = 273.15;

    private static final double SUTHERLAND_FACTOR = 1.458e-6;
    private static final double SUTHERLAND_TEMPERATURE_K = 110.4;

    private Air() {}

    /**
     * Density by the ideal gas law.
     *
     * @param pressurePa absolute
     * @param temperatureK absolute, above 0
     * @return kg/m³
     */
    public static double densityKgPerM3(double pressurePa, double temperatureK) {
        return pressurePa / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }

    /**
     * Dynamic viscosity by Sutherland's law. US Standard Atmosphere 1976, eq. 51, with the 110.4 K of the errata (the
     * document itself prints 110 K in two places).
     *
     * @param temperatureK absolute, above 0
     * @return Pa s
     */
    public static double viscosityPaS(double temperatureK) {
        return SUTHERLAND_FACTOR * temperatureK * Math.sqrt(temperatureK) / (temperatureK + SUTHERLAND_TEMPERATURE_K);
    }
}
