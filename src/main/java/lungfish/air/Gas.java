package lungfish.air;

/**
 * A gas flowing isothermally: what a pipe law needs to know of it.
 *
 * @param gasConstantJPerKgK specific gas constant, universal constant over molar mass, above 0
 * @param viscosityPaS dynamic, at the temperature of the pipe, above 0
 */
public record Gas(double gasConstantJPerKgK, double viscosityPaS) {
    public Gas {
        Checks.positive(gasConstantJPerKgK, "gas constant");
        Checks.positive(viscosityPaS, "viscosity");
    }

    /** Dry air with its viscosity at a temperature. */
    public static Gas airAt(double temperatureK) {
        return new Gas(Air.GAS_CONSTANT_J_PER_KG_K, Air.viscosityPaS(temperatureK));
    }

    /** Density by the ideal gas law, kg/m³, at an absolute pressure and temperature. */
    public double densityKgPerM3(double pressurePa, double temperatureK) {
        return pressurePa / (gasConstantJPerKgK * temperatureK);
    }
}
