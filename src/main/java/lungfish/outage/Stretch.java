package lungfish.outage;

import java.util.List;
import java.util.Set;
import lungfish.room.StirrerId;

/**
 * A part of an outage in which nothing is switched.
 *
 * @param toS after {@code fromS}
 * @param power what drives the blowers
 * @param state what runs and what does not
 * @param airM3PerS free air of every outlet, in the order of {@link Drill#needs}
 * @param stirring the stirrers that run
 * @param chargeFrom share of the batteries' energy left at the beginning
 * @param chargeTo the same at the end
 */
public record Stretch(
        double fromS,
        double toS,
        Power power,
        State state,
        List<Double> airM3PerS,
        Set<StirrerId> stirring,
        double chargeFrom,
        double chargeTo) {
    public Stretch {
        airM3PerS = List.copyOf(airM3PerS);
        stirring = Set.copyOf(stirring);
    }

    /** How many outlets get any air. */
    public int outletsOn() {
        return (int) airM3PerS.stream().filter(air -> air > 0).count();
    }
}
