package lungfish.demand;

import java.util.List;
import lungfish.reason.Assumption;
import lungfish.reason.Finding;

/**
 * The air that a room asks for. Outlets that run sometimes count as on; planned racks stay outside.
 *
 * @param needs of the outlets in place, in the order drawn
 * @param planned of the outlets of planned racks
 */
public record Demand(List<Need> needs, List<Need> planned, List<Finding> findings, List<Assumption> assumptions) {
    public Demand {
        needs = List.copyOf(needs);
        planned = List.copyOf(planned);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /** Sum of the targets in place, m³/s of free air. */
    public double totalM3PerS() {
        return needs.stream().mapToDouble(need -> need.targetM3PerS().si()).sum();
    }
}
