package lungfish.network;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What tuning adds to the flows.
 *
 * @param requiredGaugePa common pressure of all sources
 * @param indexDrop position of the drop with the least spare
 * @param sparePa of each drop; NaN without a target
 * @param tunedValveK of each drop, 1/m⁴; NaN without a target
 */
@SuppressWarnings("ArrayRecordComponent") // never compared; handed over by the one who made them
record Tuning(double requiredGaugePa, int indexDrop, double[] sparePa, double[] tunedValveK) {
    TunedDrop drop(Flows flows, int i) {
        return new TunedDrop(flows.drop(i), known(sparePa[i]), known(tunedValveK[i]));
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    TunedSource source(Flows flows, int i) {
        double asked = flows.sourceKgPerS(i) / flows.network().conditions().airDensityKgPerM3();
        if (flows.network().sources().get(i) instanceof Source.Blower blower) {
            return blower(blower, asked);
        }
        OptionalDouble any = OptionalDouble.empty();
        return new TunedSource(requiredGaugePa, asked, any, any, any, true, false);
    }

    private TunedSource blower(Source.Blower blower, double asked) {
        Curve curve = blower.curve();
        double gives = curve.flowAt(requiredGaugePa) * blower.count();
        return new TunedSource(
                requiredGaugePa,
                asked,
                OptionalDouble.of(gives),
                OptionalDouble.of(gives - asked),
                known(curve.pressureAt(asked / blower.count())),
                curve.isInside(requiredGaugePa),
                gives == 0.0);
    }

    OptionalDouble headroomM3PerS(Flows flows) {
        double sum = 0.0;
        for (int i = 0; i < flows.network().sources().size(); i++) {
            OptionalDouble each = source(flows, i).headroomM3PerS();
            if (each.isEmpty()) {
                return each;
            }
            sum += each.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    List<String> whyNot(Flows flows) {
        Network network = flows.network();
        Drop index = network.drops().get(indexDrop);
        List<String> reasons = new ArrayList<>();
        for (int i = 0; i < network.sources().size(); i++) {
            Source source = network.sources().get(i);
            TunedSource state = source(flows, i);
            if (source instanceof Source.FixedPressure fixed && fixed.gaugePa() < requiredGaugePa) {
                reasons.add(Reasons.tooLow(source, index, requiredGaugePa, fixed.gaugePa()));
            } else if (state.headroomM3PerS().orElse(0.0) < 0.0) {
                double gives = state.givesM3PerS().orElse(0.0);
                reasons.add(Reasons.tooWeak(source, index, requiredGaugePa, gives, state.askedM3PerS()));
            }
        }
        return List.copyOf(reasons);
    }
}
