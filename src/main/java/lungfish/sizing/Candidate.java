package lungfish.sizing;

import java.util.List;
import lungfish.catalogue.BlowerClass;

/**
 * A class looked at for a room, and the verdict.
 *
 * @param fleet that class in the room's places
 * @param tired where it runs due for its rebuild, devices due for cleaning
 * @param fresh where it runs new, devices still due (its highest pressure and power)
 * @param reserveShare what it keeps beyond the targets at the needed pressure, tired, as a share of them; negative: short
 * @param dba at the listener
 * @param broken the limits it breaks, the gravest first; empty: it fits
 */
public record Candidate(
        Fleet fleet, Running tired, Running fresh, double reserveShare, double dba, List<Limit.Broken> broken) {
    public Candidate {
        broken = List.copyOf(broken);
    }

    public BlowerClass kind() {
        return fleet.kind();
    }

    public boolean fits() {
        return broken.isEmpty();
    }
}
