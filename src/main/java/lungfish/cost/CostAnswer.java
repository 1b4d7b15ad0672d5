package lungfish.cost;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;
import lungfish.reason.Why;

/**
 * The central blower against the small pumps of today.
 *
 * @param currency a label, where the keeper gave one
 * @param years over which costs are counted
 * @param today what the small pumps cost when kept; absent where there are none
 * @param paybackYear the year from which on the central blower stays no dearer, 1 the first; absent: never in these years
 * @param keepSmallPumps the finding that the pumps should stay, if only money is asked; whether they give enough air is
 *     for the caller to judge
 */
public record CostAnswer(
        Optional<String> currency,
        int years,
        Bill central,
        Optional<Bill> today,
        OptionalInt paybackYear,
        Optional<Finding> keepSmallPumps,
        List<Assumption> assumptions,
        Why whyCentral,
        Optional<Why> whyToday) {
    public CostAnswer {
        assumptions = List.copyOf(assumptions);
    }
}
