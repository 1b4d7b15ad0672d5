package lungfish.today;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lungfish.cost.CostAnswer;
import lungfish.plan.Plan;
import lungfish.sizing.PumpedAir;

/**
 * The small pumps as they are, beside the central blower as planned, and whether to buy it.
 *
 * @param today absent where no pump of today is known
 * @param planned absent without a pipe or outlets, and where the network cannot be solved
 * @param years over which money and events are counted; 0 where nobody can count them
 * @param paybackYear from which the blower stays no dearer, 1 the first; absent: never in these years
 * @param paysFrom where the answer is "not yet": with how many outlets it would pay; absent where nobody knows
 * @param reasons what differs, the weightiest first
 */
public record Beside(
        Optional<Way> today,
        Optional<Way> planned,
        int years,
        OptionalInt paybackYear,
        OptionalInt paysFrom,
        Verdict verdict,
        List<Reason> reasons) {
    public Beside {
        reasons = List.copyOf(reasons);
    }

    /** What a plan holds of both. */
    public static Beside of(Plan plan) {
        PumpedAir air = PumpedAir.of(plan.demand(), plan.pumps());
        Optional<Way> today = SmallPumps.of(plan, air);
        Optional<Way> planned = CentralBlower.of(plan);
        Judging judging = new Judging(plan, air, today, planned);
        return new Beside(
                today,
                planned,
                plan.cost().map(CostAnswer::years).orElse(0),
                plan.cost().map(CostAnswer::paybackYear).orElse(OptionalInt.empty()),
                plan.paysFrom(),
                judging.verdict(),
                judging.reasons());
    }

    /** Those that speak for the central blower, or those against it. */
    public List<Reason> reasons(boolean thatSpeakFor) {
        return reasons.stream()
                .filter(reason -> reason.kind().speaksFor() == thatSpeakFor)
                .toList();
    }
}
