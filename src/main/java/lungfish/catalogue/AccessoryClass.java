package lungfish.catalogue;

/**
 * An inlet filter or a silencer.
 *
 * @param lossFactorPaS2PerM6 loss: {@code Δp = k q²}
 * @param insertionLossDb what it takes off the sound of the air path (not of the casing)
 */
public record AccessoryClass(
        String id,
        String name,
        Kind kind,
        double lossFactorPaS2PerM6,
        double insertionLossDb,
        double price,
        String source) {
    /** Where it sits. */
    public enum Kind {
        INLET_FILTER,
        INLET_SILENCER,
        OUTLET_SILENCER
    }

    /** The same, taking so many times the pressure. */
    public AccessoryClass losing(double times) {
        return new AccessoryClass(id, name, kind, times * lossFactorPaS2PerM6, insertionLossDb, price, source);
    }
}
