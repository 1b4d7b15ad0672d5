package lungfish.air;

/**
 * Tank water at the surface pressure.
 *
 * @param temperatureK absolute, 273.15 to 313.15
 * @param salinityGPerKg 0 for fresh water to 42
 */
public record Water(double temperatureK, double salinityGPerKg) {
    /** Standard acceleration of free fall, m/s²: by definition (3rd CGPM, 1901). */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    private static final double CRITICAL_K = 647.096;

    public Water {
        Checks.positive(temperatureK, "water temperature");
        Checks.notNegative(salinityGPerKg, "salinity");
    }

    /** Fresh water at a temperature. */
    public static Water freshAt(double temperatureK) {
        return new Water(temperatureK, 0.0);
    }

    /**
     * Density by the one-atmosphere equation of state of sea water, EOS-80. UNESCO Technical Papers in Marine Science
     * 44 (Fofonoff and Millard 1983), p. 17; check values p. 19.
     *
     * @return kg/m³
     */
    public double densityKgPerM3() {
        double t = temperatureK - Air.ZERO_CELSIUS_K;
        double s = salinityGPerKg;
        double fresh = 999.842594
                + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        double linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double bent = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        return fresh + s * (linear + bent * Math.sqrt(s) + 4.8314e-4 * s);
    }

    /** Pressure of a column of this water above its surface pressure, Pa. */
    public double columnPa(double depthM) {
        return densityKgPerM3() * GRAVITY_M_PER_S2 * depthM;
    }

    /**
     * Dynamic viscosity of fresh water (salt adds 2 % for each 10 g/kg, left out):
     * {@code 2.414e-5 · 10^(247.8/(T − 140))}. Fox and McDonald, Introduction to Fluid Mechanics, appendix A.
     *
     * @return Pa s, within 2.5 %
     */
    public double viscosityPaS() {
        return 2.414e-5 * Math.pow(10.0, 247.8 / (temperatureK - 140.0));
    }

    /**
     * Surface tension of clean fresh water against air: {@code 0.2358 τ^1.256 (1 − 0.625 τ)}, τ = 1 − T/647.096 K.
     * IAPWS R1-76 (2014).
     *
     * @return N/m
     */
    public double surfaceTensionNPerM() {
        double below = 1.0 - temperatureK / CRITICAL_K;
        return 0.2358 * Math.pow(below, 1.256) * (1.0 - 0.625 * below);
    }
}
