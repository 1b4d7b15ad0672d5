package lungfish.growth;

import java.util.ArrayList;
import java.util.List;
import lungfish.plan.Basis;
import lungfish.sizing.Candidate;
import lungfish.sizing.Limit;

/** What stops a growing room. The reserve does not: it is there to be grown into. */
final class Breaks {
    private Breaks() {}

    /** The limits that a blower breaks in a room, the gravest first; none: it carries the room. */
    static List<Limit.Broken> of(Basis basis, Candidate candidate) {
        List<Limit.Broken> broken = new ArrayList<>(candidate.broken());
        broken.removeIf(each -> each.limit() == Limit.RESERVE);
        basis.further(candidate, candidate.tired())
                .filter(each -> broken.stream().noneMatch(known -> known.limit() == each.limit()))
                .ifPresent(broken::add);
        return broken;
    }
}
