package lungfish.measured;

import java.util.List;
import lungfish.measured.OutletLaw.Off;
import lungfish.measured.Unknowns.Felt;
import org.jspecify.annotations.Nullable;

/**
 * How outlets answer to the unknowns. An outlet whose flow hardly differs from when it was last asked answers as it did then: most
 * of what may happen leaves most outlets almost alone, and only slopes rest on it.
 */
final class Slopes {
    private static final double ALMOST = 0.005;

    private final Start start;
    private final Unknowns unknowns;
    private final @Nullable Of[] known;

    /**
     * Of one outlet at a flow.
     *
     * @param needs what the pressure that it needs grows by with the flow, Pa s/m³
     * @param inputs what it grows by with each unknown that it feels, in their order
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Of(double flow, Off off, double needs, double[] inputs) {}

    Slopes(Start start, Unknowns unknowns) {
        this.start = start;
        this.unknowns = unknowns;
        this.known = new Of[start.outlets()];
    }

    Of of(int outlet, double flow, Off off) {
        Of last = known[outlet];
        if (last != null && last.off().equals(off) && Math.abs(flow - last.flow()) <= ALMOST * flow) {
            return last;
        }
        OutletLaw law = start.laws().get(outlet);
        List<Felt> felt = unknowns.felt(outlet);
        double[] inputs = new double[felt.size()];
        for (int k = 0; k < inputs.length; k++) {
            inputs[k] = felt.get(k).input().slope(law, flow, off);
        }
        Of now = new Of(flow, off, law.slope(flow, off), inputs);
        known[outlet] = now;
        return now;
    }
}
