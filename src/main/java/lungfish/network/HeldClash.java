package lungfish.network;

import org.jspecify.annotations.Nullable;

/** Looks for two fixed pressures at nodes that are one. */
final class HeldClash {
    private HeldClash() {}

    static @Nullable Refused find(Network network, Shape shape, Knots knots) {
        Source.@Nullable FixedPressure[] at = new Source.FixedPressure[knots.count];
        for (int i = 0; i < shape.sources(); i++) {
            if (network.sources().get(i) instanceof Source.FixedPressure fixed) {
                int knot = knots.ofNode[shape.sourceNode[i]];
                Source.FixedPressure first = at[knot];
                if (first != null && first.gaugePa() != fixed.gaugePa()) {
                    return Reasons.twoPressures(first, fixed);
                }
                at[knot] = fixed;
            }
        }
        return null;
    }
}
