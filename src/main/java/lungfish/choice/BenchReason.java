package lungfish.choice;

import java.util.List;
import java.util.Optional;
import lungfish.room.Wishes.Wish;
import lungfish.sizing.Limit;

/**
 * Why a blower stands where it stands.
 *
 * @param isFirst whether it is the one that the plan would choose
 * @param best of the first: the wishes by which it was picked out of those that serve, the one that decided last; of the
 *     others: the one in which nobody that serves is as good
 * @param broken the limits it breaks, the gravest first
 * @param behind of one that fits and is not first: where it falls behind the first; absent: by no wish
 */
public record BenchReason(boolean isFirst, List<Wish> best, List<Limit.Broken> broken, Optional<Behind> behind) {
    public BenchReason {
        best = List.copyOf(best);
        broken = List.copyOf(broken);
    }

    /**
     * By how much it is worse than the first, in what a wish is about.
     *
     * @param bySi never negative: m³/s of rated flow, money to buy, dB(A), money a year, s of life; not a number where nobody
     *     knows its level
     */
    public record Behind(Wish wish, double bySi) {}
}
