package lungfish.air;

/** What it takes to push the first bubble out of a wetted pore. */
public final class BubblingPressure {
    private BubblingPressure() {}

    /** Young and Laplace, {@code 4 σ/d}, Pa, for a round pore of a diameter in water that wets it. */
    public static double pa(double surfaceTensionNPerM, double poreM) {
        return 4.0 * surfaceTensionNPerM / poreM;
    }
}
