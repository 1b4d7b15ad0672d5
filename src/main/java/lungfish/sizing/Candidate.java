package lungfish.sizing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.catalogue.BlowerClass;

/**
 * A class looked at for a room, and the verdict.
 *
 * @param fleet that class in the room's places
 * @param tired where it runs due for its rebuild, devices due for cleaning
 * @param fresh where it runs new, devices still due (its highest pressure and power)
 * @param reserveShare what it keeps beyond the targets at the needed pressure, tired, as a share of them; negative: short
 * @param dba at the listener; absent where nobody knows the level
 * @param broken the limits it breaks, the gravest first; empty: it fits
 */
public record Candidate(
        Fleet fleet, Running tired, Running fresh, double reserveShare, OptionalDouble dba, List<Limit.Broken> broken) {
    public Candidate {
        broken = List.copyOf(broken);
    }

    public BlowerClass kind() {
        return fleet.kind();
    }

    /** Whether it serves the room and every wish. */
    public boolean fits() {
        return broken.isEmpty();
    }

    /** Whether it serves the room, be it louder, shorter on battery or with less room to grow than is wished for. */
    public boolean serves() {
        return broken.stream().allMatch(each -> each.limit().isWish());
    }

    /** How far it is from serving: the sum of the shares by which it breaks limits that are no wishes. */
    double distance() {
        return broken.stream()
                .filter(each -> !each.limit().isWish())
                .mapToDouble(Limit.Broken::share)
                .sum();
    }

    /** By how much it breaks a limit, in the limit's own unit; empty where it does not. */
    public Optional<Double> shortOf(Limit limit) {
        return shortOf(limit, Limit.Broken::bySi);
    }

    /** As {@link #shortOf(Limit)}, in another measure. */
    Optional<Double> shortOf(Limit limit, Function<Limit.Broken, Double> by) {
        return broken.stream().filter(each -> each.limit() == limit).map(by).findFirst();
    }

    /** Whether it is made for this mains. */
    public boolean suitsMains() {
        return broken.stream().noneMatch(each -> each.limit() == Limit.MAINS);
    }
}
