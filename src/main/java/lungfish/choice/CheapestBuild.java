package lungfish.choice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lungfish.plan.Progress;
import lungfish.room.Room;
import lungfish.room.Wishes;
import lungfish.sizing.Limit;

/**
 * The cheapest build that meets every wish and limit: of each size of pipe, each layout, each class of blower. And what each
 * wish costs: how much cheaper the cheapest build is where that one is left out.
 *
 * @param drawn the room as drawn, with its blower: that which it names, or which the plan chooses
 * @param best the cheapest to buy; of builds at one price that which costs least over the years; absent where none meets all
 * @param lasting of the builds that meet all, the one that costs least over the years
 * @param prices of the wishes that are asked, then of the limits
 * @param nearest where there is no best: what comes nearest, be it short of a wish, or of a limit
 * @param assumed wishes that the keeper has not typed, and that are asked all the same
 * @param builds how many were compared
 */
public record CheapestBuild(
        Build drawn,
        Optional<Build> best,
        Optional<Build> lasting,
        List<WishPrice> prices,
        Optional<Build> nearest,
        Set<Limit> assumed,
        int builds) {
    private static final List<Limit> LIMITS =
            List.of(Limit.RATING, Limit.LEAST_FLOW, Limit.HEAT, Limit.MAINS, Limit.SPEED);

    public CheapestBuild {
        prices = List.copyOf(prices);
        assumed = Set.copyOf(assumed);
    }

    /** Searches among the variants of a study. */
    public static CheapestBuild of(PipeStudy study, Progress progress) {
        List<Limit> left = leftOut(study.room());
        List<WishPrice> prices = new ArrayList<>();
        int steps = left.size() + 1; // what each wish costs, and the search among all
        BuildSearch search = new BuildSearch(study, () -> progress.at(prices.size(), steps));
        Optional<Build> best = search.cheapest(Optional.empty());
        for (Limit limit : left) {
            progress.at(prices.size(), steps);
            prices.add(price(limit, best, search.cheapest(Optional.of(limit))));
        }
        Optional<Build> nearest = best.isPresent() ? Optional.empty() : search.nearest();
        return new CheapestBuild(
                search.drawn(),
                best,
                search.lasting(),
                prices,
                nearest,
                assumed(study.room().wishes()),
                search.builds());
    }

    private static WishPrice price(Limit limit, Optional<Build> best, Optional<Build> without) {
        OptionalDouble costs = best.isPresent() && without.isPresent()
                ? OptionalDouble.of(best.get().purchase() - without.get().purchase())
                : OptionalDouble.empty();
        return new WishPrice(limit, without, costs);
    }

    /** What can be left out, one at a time: each wish that is asked, and each limit but the air itself. */
    private static List<Limit> leftOut(Room room) {
        List<Limit> limits = new ArrayList<>(List.of(Limit.RESERVE, Limit.SPARE));
        if (room.wishes().loudestDba().isPresent()) {
            limits.add(Limit.NOISE);
        }
        if (room.wishes().runtimeS().isPresent() && !room.backup().batteries().isEmpty()) {
            limits.add(Limit.RUNTIME);
        }
        limits.addAll(LIMITS);
        return limits;
    }

    private static Set<Limit> assumed(Wishes wishes) {
        Set<Limit> assumed = EnumSet.noneOf(Limit.class);
        if (wishes.growthReserve().isEmpty()) {
            assumed.add(Limit.RESERVE);
        }
        if (wishes.indexSparePa().isEmpty()) {
            assumed.add(Limit.SPARE);
        }
        return assumed;
    }

    /** The wishes, or else the limits, that stand in the way: without one of them there would be a build. */
    public List<WishPrice> inTheWay() {
        return best.isPresent()
                ? List.of()
                : prices.stream().filter(price -> price.build().isPresent()).toList();
    }
}
