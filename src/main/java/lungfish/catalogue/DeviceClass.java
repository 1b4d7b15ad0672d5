package lungfish.catalogue;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A class of device that gives air to water.
 *
 * @param clean its resistance when new and wetted
 * @param due its resistance when it is due for cleaning
 * @param leastM3PerS least flow at which it does its work
 * @param typicalM3PerS the flow it is usually given
 * @param mostM3PerS the most it takes; absent: no limit known
 * @param bubbles what it makes
 * @param uplift the tube in which its bubbles lift water, where it has one
 * @param source published source, or "typical of its class, no source"
 */
public record DeviceClass(
        String id,
        String name,
        Kind kind,
        Resistance clean,
        Resistance due,
        double leastM3PerS,
        double typicalM3PerS,
        OptionalDouble mostM3PerS,
        Bubbles bubbles,
        Optional<Uplift> uplift,
        String source) {
    /** The kinds of device. */
    public enum Kind {
        SPONGE_FILTER,
        AIR_STONE,
        MOVING_BED_FILTER,
        BOX_FILTER,
        HATCHING_CONE,
        EGG_TUMBLER,
        UPLIFT_TUBE,
        UNDER_GRAVEL,
        DIFFUSER
    }

    /** How fine its bubbles are. */
    public enum Bubbles {
        FINE,
        COARSE
    }

    /**
     * What it takes to push air through: {@code Δp = p0 + a q + b q²}.
     *
     * @param p0Pa bubbling pressure
     * @param aPaSPerM3 linear part
     * @param bPaS2PerM6 quadratic part
     */
    public record Resistance(double p0Pa, double aPaSPerM3, double bPaS2PerM6) {}

    /**
     * An uplift tube.
     *
     * @param boreM its bore
     * @param lossFactor further loss factor of sponge or box, on the velocity in the tube
     */
    public record Uplift(double boreM, double lossFactor) {}
}
