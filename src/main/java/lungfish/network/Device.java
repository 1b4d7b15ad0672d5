package lungfish.network;

/**
 * What makes the bubbles: {@code Δp = p0 + a q + b q²}, q in m³/s of free air.
 *
 * @param p0Pa bubbling pressure of a fine-pore stone, about 0 for an open tube
 * @param aPaSPerM3 linear part
 * @param bPaS2PerM6 square part
 */
public record Device(double p0Pa, double aPaSPerM3, double bPaS2PerM6) {
    /** Checks the numbers. */
    public Device {
        Part.from0("p0Pa", p0Pa);
        Part.from0("aPaSPerM3", aPaSPerM3);
        Part.from0("bPaS2PerM6", bPaS2PerM6);
    }
}
