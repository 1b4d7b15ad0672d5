package lungfish.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lungfish.quantity.Dimension;
import lungfish.reason.Assumable;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;

/**
 * What the plan assumes alike of one part or of several.
 *
 * @param first of the first of the parts
 * @param where all the parts, in the order told
 */
public record SharedAssumption(Assumption first, List<PartId> where) {
    public SharedAssumption {
        where = List.copyOf(where);
    }

    /** The same number for the same thing is told once; the order is that of the first of each. */
    public static List<SharedAssumption> of(List<Assumption> all) {
        Map<Told, List<Assumption>> alike = new LinkedHashMap<>();
        for (Assumption each : all) {
            Told told = new Told(each.key(), each.what(), each.si(), each.dimension());
            alike.computeIfAbsent(told, none -> new ArrayList<>()).add(each);
        }
        return alike.values().stream()
                .map(those -> new SharedAssumption(
                        those.get(0), those.stream().map(Assumption::where).toList()))
                .toList();
    }

    private record Told(Assumable key, String what, double si, Dimension dimension) {}
}
