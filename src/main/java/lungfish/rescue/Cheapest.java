package lungfish.rescue;

import java.util.List;

/**
 * The cheapest set for a goal.
 *
 * @param asked how many tanks the goal is about
 * @param set with it none of them comes into danger, but for those that no set keeps
 * @param outcome of all hazards with that set
 * @param lost those that no set keeps; with them the set is only what comes nearest
 */
public record Cheapest(Goal goal, int asked, MeansSet set, Outcome outcome, List<Lost> lost) {
    public Cheapest {
        lost = List.copyOf(lost);
    }

    /** Whether it keeps every tank of the goal. */
    public boolean keepsAll() {
        return lost.isEmpty();
    }

    /** Whether the room as it is does so already. */
    public boolean isNothing() {
        return set.means().isEmpty();
    }
}
