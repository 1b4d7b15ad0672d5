package lungfish.air;

/**
 * A round pipe or airline with the fittings that sit in it.
 *
 * @param lengthM 0 or above; 0 is a bare fitting
 * @param boreM inside diameter, above 0
 * @param roughnessM height of the wall's roughness, 0 for smooth
 * @param lossSum sum of the loss factors K of its fittings, on the velocity head in this bore, 0 or above
 */
public record Tube(double lengthM, double boreM, double roughnessM, double lossSum) {
    public Tube {
        Checks.notNegative(lengthM, "length");
        Checks.positive(boreM, "bore");
        Checks.notNegative(roughnessM, "roughness");
        Checks.notNegative(lossSum, "loss sum");
    }

    /** Cross-section, m². */
    public double areaM2() {
        return areaM2(boreM);
    }

    /** Cross-section of a round bore, m². */
    public static double areaM2(double boreM) {
        return Math.PI / 4.0 * boreM * boreM;
    }

    /** Relative roughness ε/D. */
    public double relativeRoughness() {
        return roughnessM / boreM;
    }

    /** Mean velocity in the bore, m/s, of a mass flow at a density. */
    public double velocityMPerS(double flowKgPerS, double densityKgPerM3) {
        return flowKgPerS / (densityKgPerM3 * areaM2());
    }

    /** The same tube with more fittings in it. */
    public Tube plusLoss(double moreLoss) {
        return new Tube(lengthM, boreM, roughnessM, lossSum + moreLoss);
    }
}
