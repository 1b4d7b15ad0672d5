package lungfish.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import lungfish.sizing.Fleet;

/** What a fleet is called: its machines by class, and how many of each. */
public final class FleetName {
    private FleetName() {}

    /** "Linear piston blower, 100 L/min at 16 kPa", "4 × …", or several of these with "and" between. */
    public static String of(Fleet fleet) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        fleet.placed()
                .forEach(each ->
                        counts.merge(each.machine().name(), each.machine().count(), Integer::sum));
        return counts.entrySet().stream()
                .map(each -> (each.getValue() > 1 ? each.getValue() + " × " : "") + each.getKey())
                .collect(Collectors.joining(" and "));
    }
}
