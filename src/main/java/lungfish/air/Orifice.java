package lungfish.air;

/**
 * A drilled hole with sharp edges: {@code Δp = ρ/2 (Q/(C A))²}, Bernoulli's equation with a contracted jet, as in every textbook of
 * fluid mechanics (from memory). Low speeds, so that the air keeps its density.
 */
public final class Orifice {
    /** Discharge coefficient of a sharp-edged hole in a wide wall. Textbooks print 0.61 to 0.62 (from memory). */
    public static final double DISCHARGE_COEFFICIENT = 0.61;

    private Orifice() {}

    /** Pressure that a flow of air needs, Pa; the flow in m³/s at the density of the air before the hole. */
    public static double dropPa(double holeM, double flowM3PerS, double densityKgPerM3) {
        double speed = flowM3PerS / (DISCHARGE_COEFFICIENT * Tube.areaM2(holeM));
        return 0.5 * densityKgPerM3 * speed * speed;
    }

    /** Flow that a pressure drives, m³/s at the density of the air before the hole. */
    public static double flowM3PerS(double holeM, double dropPa, double densityKgPerM3) {
        return DISCHARGE_COEFFICIENT * Tube.areaM2(holeM) * Math.sqrt(2.0 * dropPa / densityKgPerM3);
    }

    /** The same as the coefficient of a {@link Valve}, 1/m⁴: {@code 1/(2 (C A)²)}. */
    public static double k(double holeM) {
        double throat = DISCHARGE_COEFFICIENT * Tube.areaM2(holeM);
        return 1.0 / (2.0 * throat * throat);
    }
}
