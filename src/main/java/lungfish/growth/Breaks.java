package lungfish.growth;

import java.util.List;
import lungfish.plan.Basis;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/** What stops a growing room. The reserve does not: it is there to be grown into. */
final class Breaks {
    private Breaks() {}

    /** The limits and wishes that a blower misses in a room, those of the bench first; none: it carries the room. */
    static List<Limit.Broken> of(Basis basis, Candidate candidate) {
        return basis.missed(candidate).stream()
                .filter(each -> each.limit() != Limit.RESERVE)
                .toList();
    }
}
