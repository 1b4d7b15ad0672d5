package lungfish.everyday;

import java.util.Optional;
import java.util.Set;
import lungfish.plan.Plan;
import lungfish.room.OutletId;

/** Why a disturbance cannot be answered. */
public enum Lack {
    /** The room cannot be solved. */
    UNSOLVED,
    /** None of those that it is asked of is in place. */
    NOBODY,
    /** No outlet runs only sometimes. */
    NO_HATCHERY,
    /** No blower has an inlet filter, as far as the room says. */
    NO_FILTER;

    /** What keeps a plan from answering; empty where nothing does. */
    public static Optional<Lack> of(Plan plan, Disturbance.Kind kind, Set<OutletId> meant) {
        if (plan.piped().isEmpty() || plan.duty().isEmpty() || plan.trials().isEmpty()) {
            return Optional.of(UNSOLVED);
        }
        var needs = plan.piped().get().needs();
        boolean isFiltered = plan.duty().get().candidate().fleet().placed().stream()
                .anyMatch(place -> place.machine().accessories().isFiltered());
        if (kind == Disturbance.Kind.FILTER_CLOGGED && !isFiltered) {
            return Optional.of(NO_FILTER);
        }
        if (kind.isOfHatchery()) {
            boolean isAny = needs.stream().anyMatch(need -> need.seat().outlet().isSometimes());
            return isAny ? Optional.empty() : Optional.of(NO_HATCHERY);
        }
        boolean isAny = meant.isEmpty() || needs.stream().anyMatch(need -> meant.contains(need.id()));
        return isAny || kind.isOfBlower() ? Optional.empty() : Optional.of(NOBODY);
    }
}
