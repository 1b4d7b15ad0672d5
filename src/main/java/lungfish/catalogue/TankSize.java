package lungfish.catalogue;

/**
 * A common size of tank, as the trade sells it: outside measures.
 *
 * @param trade whose shelves it is found on
 * @param waterDepthM to which such a tank is usually filled
 * @param source published source, or "typical of its class, no source"
 */
public record TankSize(
        String id,
        String name,
        Trade trade,
        double lengthM,
        double widthM,
        double heightM,
        double waterDepthM,
        String source) {
    /** Sizes in centimetres and litres, or in inches and US gallons. */
    public enum Trade {
        METRIC,
        US
    }
}
