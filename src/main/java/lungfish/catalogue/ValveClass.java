package lungfish.catalogue;

/**
 * A class of valve at a tap or in a gang.
 *
 * @param boreM on whose area the loss factor is counted
 * @param openLossFactor K when fully open
 * @param characteristic how the opening changes it
 * @param rangeability largest over least controllable flow, for the equal-percentage characteristic
 */
public record ValveClass(
        String id,
        String name,
        double boreM,
        double openLossFactor,
        Characteristic characteristic,
        double rangeability,
        double price,
        String source) {
    /** Inherent characteristics; the last is a quarter-turn ball. */
    public enum Characteristic {
        LINEAR,
        EQUAL_PERCENTAGE,
        BALL
    }
}
