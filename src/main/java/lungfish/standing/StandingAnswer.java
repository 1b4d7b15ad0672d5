package lungfish.standing;

import java.util.List;
import lungfish.reason.Assumption;

/**
 * How the ways to give a room its air stand up to failures.
 *
 * @param tanks that get air, in place
 * @param ways in the order of {@link Way}
 * @param assumptions what the room does not say
 */
public record StandingAnswer(Rates rates, int tanks, List<Standing> ways, List<Assumption> assumptions) {
    public StandingAnswer {
        ways = List.copyOf(ways);
        assumptions = List.copyOf(assumptions);
    }

    /** One of the ways. */
    public Standing of(Way way) {
        return ways.stream().filter(each -> each.way() == way).findFirst().orElseThrow();
    }
}
