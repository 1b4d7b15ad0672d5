package lungfish.network;

/**
 * The pressure that a drop needs at its tap for a flow, term by term from the water up; the terms add up to it.
 *
 * @param waterPa column above the air release
 * @param devicePa of the device
 * @param checkPa of the check valve, opening pressure and slope
 * @param airlinePa lost in the airline
 * @param valvePa lost in the tap valve
 */
public record DropNeed(double waterPa, double devicePa, double checkPa, double airlinePa, double valvePa) {
    /** Gauge pressure at the tap, Pa. */
    public double totalPa() {
        return waterPa + devicePa + checkPa + airlinePa + valvePa;
    }
}
