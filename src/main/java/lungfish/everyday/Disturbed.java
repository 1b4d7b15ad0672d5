package lungfish.everyday;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.network.Conditions;
import lungfish.network.DropFlow;
import lungfish.reason.Finding;

/**
 * What a disturbance does, no valve touched, and what to do about it; the blower tired and the devices due for cleaning, as in
 * all trials.
 *
 * @param hit the outlets that it happens to, the most changed first; none where it happens to the blower
 * @param others the rest, the most changed first
 * @param order the valves to turn; empty where no valve mends it
 * @param bleed what the bleed can do instead; empty where there is nothing to turn at it
 * @param findings what must not be: somebody gets more than he bears
 */
public record Disturbed(
        Disturbance what,
        List<Moved> hit,
        List<Moved> others,
        Blowers blowers,
        Optional<Order> order,
        Optional<Bleed> bleed,
        List<Finding> findings) {
    /** A keeper sees no difference within the band in which an outlet counts as served. */
    public static final double UNSEEN_SHARE = Conditions.usual().servedBand();

    public Disturbed {
        hit = List.copyOf(hit);
        others = List.copyOf(others);
        findings = List.copyOf(findings);
    }

    /** Whether somebody to whom it does not happen moves by more than a keeper would see. */
    public boolean isRetuned() {
        return most(others) > UNSEEN_SHARE;
    }

    /** The largest change among these, as a share of what they had. */
    public static double most(List<Moved> those) {
        return those.stream()
                .mapToDouble(moved -> Math.abs(moved.share()))
                .max()
                .orElse(0);
    }

    /** All outlets, those first that it happens to. */
    public Stream<Moved> all() {
        return Stream.concat(hit.stream(), others.stream());
    }

    /** How many air releases then lie at the surface, or above the water. */
    public int bared() {
        boolean isDrained = what.kind() == Disturbance.Kind.HALF_DRAIN;
        return isDrained
                ? (int) hit.stream()
                        .filter(moved -> Change.leftM(moved.need()) <= 0)
                        .count()
                : 0;
    }

    /** Those whose air reaches their tanks. */
    public Stream<Moved> bubbling() {
        return what.kind().isWithoutBubbles() ? others.stream() : all();
    }

    /** How many of those come into a state. */
    public int becoming(DropFlow.State state) {
        return (int) bubbling().filter(moved -> moved.became(state)).count();
    }
}
