package lungfish.air;

/**
 * A valve that can be set: what it takes at an opening, and the opening that takes what is asked.
 *
 * <p>Its coefficient k, in 1/m⁴, stands in {@code Δp = k ṁ²/ρ}, ρ at the mean of the pressures before and behind: a
 * loss factor K on a bore of area A is {@code k = K/(2A²)}.
 *
 * @param curve how its loss grows as it closes
 * @param openLossFactor loss factor K of the open valve on the velocity head of its bore, above 0
 * @param boreM above 0
 */
public record Valve(ValveCurve curve, double openLossFactor, double boreM) {
    public Valve {
        Checks.positive(openLossFactor, "open loss factor");
        Checks.positive(boreM, "bore");
    }

    /** The coefficient of a loss factor on a bore, {@code K/(2A²)}, 1/m⁴. */
    public static double k(double lossFactor, double boreM) {
        double area = Tube.areaM2(boreM);
        return lossFactor / (2.0 * area * area);
    }

    /**
     * The coefficient that takes a fall of pressure at a flow: {@code p1² − p2² = 2 k R T ṁ²}.
     *
     * @param beforePa absolute
     * @param behindPa absolute, not above {@code beforePa}
     * @return 1/m⁴; infinite without a flow
     */
    public static double kTaking(double beforePa, double behindPa, double flowKgPerS, double temperatureK) {
        double squares = Math.max(0.0, beforePa * beforePa - behindPa * behindPa);
        double rt = Air.GAS_CONSTANT_J_PER_KG_K * temperatureK;
        return flowKgPerS > 0.0 ? squares / (2.0 * rt * flowKgPerS * flowKgPerS) : Double.POSITIVE_INFINITY;
    }

    /** Coefficient of the open valve, 1/m⁴. */
    public double openK() {
        return k(openLossFactor, boreM);
    }

    /**
     * Coefficient at an opening.
     *
     * @param opening 0 shut to 1 open
     * @return 1/m⁴; infinite when shut
     */
    public double kAt(double opening) {
        return openK() * curve.lossRatio(opening);
    }

    /**
     * The opening at which the valve has a coefficient.
     *
     * @param k wanted, 1/m⁴, 0 or above
     * @return above 0 to 1; 1 also when even the open valve takes more than is wanted, 0 for an infinite k
     */
    public double openingFor(double k) {
        return curve.opening(k / openK());
    }
}
