package lungfish.everyday;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lungfish.air.Valve;
import lungfish.catalogue.Catalogue;
import lungfish.demand.Need;
import lungfish.piping.ValveMaker;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.room.OutletId;

/**
 * The valves of the outlets, in the order of the drops.
 *
 * @param startK each at its coarse start, 1/m⁴
 */
record Valves(List<Need> needs, List<Valve> valves, List<Double> startK) {
    private static final double HUNDREDTHS = 100;
    private static final double NEAR_SHUT = 0.1;

    static Valves of(Plan plan, List<Need> needs, Catalogue catalogue) {
        List<Valve> valves = needs.stream()
                .map(need -> ValveMaker.of(need.seat().outlet(), catalogue))
                .toList();
        Map<OutletId, Double> openings = plan.outlets().stream()
                .filter(outlet -> outlet.setting().isPresent())
                .collect(Collectors.toMap(
                        outlet -> outlet.need().id(),
                        (OutletPlan outlet) -> outlet.setting().orElseThrow().opening()));
        List<Double> startK = IntStream.range(0, needs.size())
                .mapToObj(i ->
                        valves.get(i).kAt(openings.getOrDefault(needs.get(i).id(), 1.0)))
                .toList();
        return new Valves(needs, valves, startK);
    }

    /** The opening at which the valve of an outlet has a coefficient. */
    double opening(int i, double k) {
        return valves.get(i).openingFor(k);
    }

    /**
     * The same in hundredths, near shut in half ones: finer than a coarse start, for the valve is turned from where it stands,
     * and the jar has the last word.
     */
    double stepped(int i, double k) {
        double opening = opening(i, k);
        double steps = opening < NEAR_SHUT ? 2 * HUNDREDTHS : HUNDREDTHS;
        return Math.max(1, Math.round(opening * steps)) / steps;
    }

    double k(int i, double opening) {
        return valves.get(i).kAt(opening);
    }
}
