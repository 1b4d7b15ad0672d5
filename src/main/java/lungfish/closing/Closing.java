package lungfish.closing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lungfish.demand.Need;
import lungfish.network.AsSet;
import lungfish.network.Conditions;
import lungfish.network.DropFlow;
import lungfish.plan.Plan;
import lungfish.room.OutletId;

/**
 * What closing some outlets does to the others, no other valve touched; the blower tired and the devices due for cleaning, as
 * in all trials.
 *
 * @param shut the outlets that are shut
 * @param others those that stay open, the most changed first
 * @param gaugeBeforePa the highest pressure at any blower's outlet
 * @param gaugeAfterPa the same once they are shut
 * @param bledBeforeM3PerS what the bleeds let out
 * @param bledAfterM3PerS the same once they are shut: the bleed valve stands as it stood, and more comes
 * @param tired the machine held hardest, tired
 * @param fresh the same with the machines new
 * @param bleed what the bleed can do instead of retuning
 */
public record Closing(
        List<Need> shut,
        List<Moved> others,
        double gaugeBeforePa,
        double gaugeAfterPa,
        double bledBeforeM3PerS,
        double bledAfterM3PerS,
        Held tired,
        Held fresh,
        Bleed bleed) {
    /** A keeper sees no difference within the band in which an outlet counts as served. */
    public static final double UNSEEN_SHARE = Conditions.usual().servedBand();

    /**
     * The bleed opened so far that every blower stands where it stood.
     *
     * @param bledM3PerS what it then lets out in all
     * @param moreM3PerS than before anything was shut
     * @param restShare by how much the most changed of the others then still moves
     */
    public record Bleed(double bledM3PerS, double moreM3PerS, double restShare) {}

    public Closing {
        shut = List.copyOf(shut);
        others = List.copyOf(others);
    }

    /**
     * Shuts outlets of a plan.
     *
     * @param trial of that plan: as its valves should be set, or as they are
     * @param shut outlets in place; others are passed over
     * @return empty where nothing can be solved, and where none of them is in place
     */
    public static Optional<Closing> of(Plan plan, AsSet trial, Set<OutletId> shut) {
        return plan.piped().flatMap(piped -> plan.duty()
                .flatMap(duty -> new Asking(piped.needs(), duty.candidate().fleet(), trial, shut).answer()));
    }

    /** Whether somebody else moves by more than a keeper would see. */
    public boolean isRetuned() {
        return most() > UNSEEN_SHARE;
    }

    /** The largest change of any of the others, as a share of what it had. */
    public double most() {
        return others.stream()
                .mapToDouble(moved -> Math.abs(moved.share()))
                .max()
                .orElse(0);
    }

    /** How many of the others come into a state. */
    public int becoming(DropFlow.State state) {
        return (int) others.stream().filter(moved -> moved.became(state)).count();
    }
}
