package lungfish.commissioning;

import java.util.Optional;
import java.util.Set;
import lungfish.plan.Plan;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/** Why a planned room has no first start. */
public enum Lack {
    /** There is nothing to solve: no pipe, no outlet, or no blower. */
    UNSOLVED,
    /** The planned blower would be held above what it bears all day. */
    ABOVE_CONTINUOUS,
    /** The planned blower would pass less air than must always pass. */
    BELOW_LEAST_FLOW,
    /** The planned blower gives too little air or pressure for the room. */
    TOO_WEAK;

    /** The gravest; empty where there is a first start. */
    public static Optional<Lack> of(Plan plan) {
        if (plan.duty().isEmpty()
                || plan.piped().isEmpty()
                || plan.piped().get().needs().isEmpty()) {
            return Optional.of(UNSOLVED);
        }
        Candidate candidate = plan.duty().get().candidate();
        if (breaks(candidate, Set.of(Limit.RATING))) {
            return Optional.of(ABOVE_CONTINUOUS);
        }
        if (breaks(candidate, Set.of(Limit.LEAST_FLOW))) {
            return Optional.of(BELOW_LEAST_FLOW);
        }
        boolean isWeak =
                candidate.fresh().gaugePa() < plan.duty().get().neededClean().pressurePa();
        return isWeak ? Optional.of(TOO_WEAK) : Optional.empty();
    }

    private static boolean breaks(Candidate candidate, Set<Limit> limits) {
        return candidate.broken().stream().anyMatch(broken -> limits.contains(broken.limit()));
    }
}
