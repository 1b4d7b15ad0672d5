package lungfish.network;

/**
 * A check valve: {@code Δp = open + slope · q}.
 *
 * @param openPa pressure at which it begins to open
 * @param slopePaSPerM3 further pressure for each m³/s of free air
 */
public record Check(double openPa, double slopePaSPerM3) {
    /** Checks the numbers. */
    public Check {
        Part.from0("openPa", openPa);
        Part.from0("slopePaSPerM3", slopePaSPerM3);
    }
}
