package lungfish.air;

/**
 * Losses that follow from geometry. Loss factors of elbows, tees and valves are things one buys: the catalogue has them,
 * each with its source. A loss factor K multiplies the velocity head of the bore that it names.
 */
public final class Fittings {
    /** Square-edged entrance, flush with a wall. Fox and McDonald, Introduction to Fluid Mechanics, Ex. 8.8. */
    public static final double ENTRANCE = 0.5;

    /** Exit into a large space. Brodkey and Hershey, Transport Phenomena (1988), Ex. 10.8, p. 439. */
    public static final double EXIT = 1.0;

    private Fittings() {}

    /** Sudden step to a narrower bore, {@code 0.5 (1 − A2/A1)}, on the narrower. Any textbook on minor losses. */
    public static double contraction(double wideBoreM, double narrowBoreM) {
        return ENTRANCE * (1.0 - areaRatio(narrowBoreM, wideBoreM));
    }

    /** Sudden step to a wider bore, {@code (1 − A1/A2)²}, on the narrower. Borda and Carnot. */
    public static double expansion(double narrowBoreM, double wideBoreM) {
        double lost = 1.0 - areaRatio(narrowBoreM, wideBoreM);
        return lost * lost * EXIT;
    }

    /** A loss factor of one bore on the velocity head of another: {@code K (A_to/A_from)²}. */
    public static double onBore(double lossFactor, double fromBoreM, double toBoreM) {
        double ratio = areaRatio(toBoreM, fromBoreM);
        return lossFactor * ratio * ratio;
    }

    /** Length of the same pipe that takes as much, {@code (L/D) D}, m: the other way in which tables print a fitting. */
    public static double equivalentLengthM(double lengthsPerBore, double boreM) {
        return lengthsPerBore * boreM;
    }

    private static double areaRatio(double narrowM, double wideM) {
        double ratio = narrowM / wideM;
        return ratio * ratio;
    }
}
