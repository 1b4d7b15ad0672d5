package lungfish.rescue;

import java.util.List;
import java.util.Set;

/** Means of which a set has none or one, on one of these ladders. */
record Slot(List<Ladder> ladders) {
    Slot {
        ladders = List.copyOf(ladders);
    }

    /** The hazards in which they do anything. */
    Set<Hazard> against() {
        return ladders.get(0).top().against();
    }
}
