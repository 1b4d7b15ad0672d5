package lungfish.catalogue;

/**
 * A kind of battery.
 *
 * @param chemistry what it is
 * @param blockV nominal voltage of the block in which it is sold
 * @param usableShare depth of discharge that it bears often
 * @param peukert exponent, 1 where capacity does not depend on current
 * @param ratedS time over which its capacity is rated
 * @param endOfLifeShare share of capacity at which it is replaced
 * @param coldestChargeK below which it must not be charged; 0 where there is no such limit
 * @param gasMaPerAh gas current for the ventilation of IEC 62485-2, boost charge; 0 where it gives off none
 */
public record BatteryClass(
        String id,
        String name,
        Chemistry chemistry,
        double blockV,
        double usableShare,
        double peukert,
        double ratedS,
        double endOfLifeShare,
        double coldestChargeK,
        double gasMaPerAh,
        double pricePerJ,
        double lifeS,
        String source) {
    /** The chemistries. */
    public enum Chemistry {
        LEAD_ACID_FLOODED,
        LEAD_ACID_SEALED,
        LITHIUM_IRON_PHOSPHATE
    }
}
