package lungfish.headroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Answer;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.piping.PipedRoom;
import lungfish.sizing.Asked;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;
import lungfish.sizing.Runs;

/**
 * Finds how many outlets still fit, by halving. The new outlets are two leaves in the network: one real drop, which says
 * what pressure such an outlet wants at that tap, and one leaf that takes the air of all the others. So the network keeps
 * its shape, however many they are, and is analysed once.
 */
public final class Search {
    /** No room is asked about more new outlets than this. */
    public static final int MOST = 4096;

    private final Fleet fleet;
    private final Asked asked;
    private final Function<Running, Optional<Limit.Broken>> further;
    private final Network base;
    private final Solver solver;
    private final Need like;
    private final Drop real;
    private final Drop rest;

    /**
     * A search in a room.
     *
     * @param further limits beyond flow, pressure, rating and heat (noise, battery), judged where the tired machine runs, as in the headline
     */
    public Search(
            PipedRoom room,
            Fleet fleet,
            Needed needed,
            Asked asked,
            Function<Running, Optional<Limit.Broken>> further) {
        this.fleet = fleet;
        this.asked = asked;
        this.further = further;
        this.base = room.network(Upkeep.DUE, fleet.fixedSources(0));
        this.like = commonest(room.needs());
        String node = base.drops().get(needed.tuned().indexDrop()).node();
        Drop pattern = base.drops().get(room.needs().indexOf(like));
        this.real = new Drop(
                "one more",
                node,
                pattern.valveKOpen(),
                pattern.valveKOpen(),
                pattern.airline(),
                pattern.check(),
                pattern.device(),
                pattern.depthM(),
                pattern.targetM3PerS());
        this.rest = new Drop(
                "the others",
                node,
                1,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty());
        this.solver = Solver.of(with(1));
    }

    /** The device that most outlets have; of those, the deepest, and of equally deep ones the most thirsty. */
    static Need commonest(List<Need> needs) {
        Map<String, Long> counts = needs.stream()
                .collect(Collectors.groupingBy(need -> need.device().id(), Collectors.counting()));
        Comparator<Need> byCount = Comparator.comparingLong(
                need -> counts.getOrDefault(need.device().id(), 0L));
        return needs.stream()
                .max(byCount.thenComparing((Need need) -> need.device().id())
                        .thenComparingDouble(need -> need.depthM().si())
                        .thenComparingDouble(need -> need.targetM3PerS().si()))
                .orElseThrow();
    }

    /** The answer. */
    public Headroom find(Needed needed, double freshFreeM3PerS) {
        double left = fleet.freeAt(needed.pressurePa(), Wear.TIRED) - needed.freeM3PerS();
        Optional<Limit.Broken> now = broken(needed.pressurePa(), needed.freeM3PerS());
        if (now.isPresent()) {
            return new Headroom(0, left, freshFreeM3PerS, now, like);
        }
        int fits = 0;
        int breaks = 1;
        while (breaks <= MOST && broken(breaks, needed).isEmpty()) {
            fits = breaks;
            breaks *= 2;
        }
        if (breaks > MOST) {
            return new Headroom(MOST, left, freshFreeM3PerS, Optional.empty(), like);
        }
        while (breaks - fits > 1) {
            int middle = (fits + breaks) / 2;
            boolean fit = broken(middle, needed).isEmpty();
            fits = fit ? middle : fits;
            breaks = fit ? breaks : middle;
        }
        return new Headroom(fits, left, freshFreeM3PerS, broken(breaks, needed), like);
    }

    private Optional<Limit.Broken> broken(int more, Needed needed) {
        solver.use(with(more));
        Answer answer = solver.tuned();
        return answer.match(
                asSet -> Optional.empty(),
                tuned -> broken(tuned.requiredGaugePa(), tuned.totalFreeM3PerS()),
                refused -> Optional.of(Limit.PRESSURE.broken(0, needed.pressurePa())));
    }

    private Optional<Limit.Broken> broken(double pressurePa, double freeM3PerS) {
        double gives = fleet.freeAt(pressurePa, Wear.TIRED);
        if (fleet.shutPa(Wear.TIRED) <= pressurePa) {
            return Optional.of(Limit.PRESSURE.broken(fleet.shutPa(Wear.TIRED), pressurePa));
        }
        if (gives < freeM3PerS) {
            return Optional.of(Limit.FLOW.broken(gives, freeM3PerS));
        }
        Runs runs = new Runs(pressurePa, freeM3PerS, asked.sparePa());
        Running fresh = runs.of(fleet, Wear.NEW);
        return fleet.overRating(Math.max(pressurePa, fresh.gaugePa()), Wear.NEW)
                .or(() -> tooHot(fresh))
                .or(() -> further.apply(runs.of(fleet, Wear.TIRED)));
    }

    private Optional<Limit.Broken> tooHot(Running fresh) {
        double airK = fresh.discharge().coolK();
        return airK > asked.warmestPipeK()
                ? Optional.of(Limit.HEAT.broken(airK, asked.warmestPipeK()))
                : Optional.empty();
    }

    private Network with(int more) {
        List<Drop> drops = new ArrayList<>(base.drops());
        drops.add(real);
        double each = like.targetM3PerS().si();
        drops.add(more > 1 ? rest.withTarget((more - 1) * each) : rest);
        return base.withDrops(drops);
    }
}
