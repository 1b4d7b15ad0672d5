package lungfish.sizing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lungfish.blower.Machine;
import lungfish.demand.Need;
import lungfish.network.Conditions;
import lungfish.room.Blower;
import lungfish.room.OutletId;

/**
 * What a small pump of today really does.
 *
 * @param served the outlets that it feeds; none where the room does not say which
 * @param gives free air that each of them gets, m³/s, pump tired and devices due
 * @param gaugePa where it runs
 * @param watts drawn there
 */
public record PumpDuty(
        Blower pump, Machine machine, List<Need> served, List<Double> gives, double gaugePa, double watts) {
    /** As for the outlets of the network. */
    private static final double SERVED_BAND = Conditions.usual().servedBand();

    public PumpDuty {
        served = List.copyOf(served);
        gives = List.copyOf(gives);
    }

    /** What its outlets get together, m³/s. */
    public double givesM3PerS() {
        return gives.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What its outlets ask for together, m³/s. */
    public double askedM3PerS() {
        return served.stream().mapToDouble(need -> need.targetM3PerS().si()).sum();
    }

    /**
     * Whether every outlet could be served: the pump gives as much as they ask for together, wherever it goes, within the
     * band in which an outlet counts as served.
     */
    public boolean enough() {
        return givesM3PerS() >= (1 - SERVED_BAND) * askedM3PerS();
    }

    /** What each outlet that it feeds gets, m³/s. */
    public Map<OutletId, Double> givesEach() {
        Map<OutletId, Double> each = new HashMap<>();
        for (int i = 0; i < gives.size(); i++) {
            each.putIfAbsent(served.get(i).id(), gives.get(i));
        }
        return each;
    }
}
