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
 * Finds how many outlets still fit. The new outlets are two leaves in the network: one real drop, which says what pressure
 * such an outlet wants at that tap, and one leaf that takes the air of all the others. So the network keeps its shape,
 * however many they are, and is analysed once. The air that is left now, shared among new outlets, says about how many they
 * are: from there steps of doubled length go to where a limit breaks, and halving finds the last that fits.
 */
public final class Search {
    /** No room is asked about more new outlets than this. */
    public static final int MOST = 4096;

    private final Asked asked;
    private final Function<Running, Optional<Limit.Broken>> further;
    private final Solver solver;
    private final Need like;
    private final int likeDrop;
    private final String node;
    private Fleet fleet;
    private Network base;
    private Drop real;
    private Drop rest;

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
        this.asked = asked;
        this.further = further;
        this.fleet = fleet;
        this.base = room.network(Upkeep.DUE, fleet.fixedSources(0));
        this.like = commonest(room.needs());
        this.likeDrop = room.needs().indexOf(like);
        this.node = base.drops().get(needed.tuned().indexDrop()).node();
        this.real = oneMore();
        this.rest = theOthers();
        this.solver = Solver.of(with(1));
    }

    /**
     * Takes other numbers of the same room: the new outlets stay at their tap, and are like what their pattern is now.
     *
     * @param changed of the same shape, devices due
     * @param machines at the same places
     */
    public void use(Network changed, Fleet machines) {
        base = changed;
        fleet = machines;
        real = oneMore();
        rest = theOthers();
    }

    private Drop oneMore() {
        Drop pattern = base.drops().get(likeDrop);
        return new Drop(
                "one more",
                node,
                pattern.valveKOpen(),
                pattern.valveKOpen(),
                pattern.airline(),
                pattern.check(),
                pattern.device(),
                pattern.depthM(),
                pattern.targetM3PerS());
    }

    private Drop theOthers() {
        return new Drop(
                "the others",
                node,
                1,
                1,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty());
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
        return walked(Math.max(1, (int) Math.min(MOST, left / each())), needed, left, freshFreeM3PerS);
    }

    private Headroom walked(int start, Needed needed, double left, double fresh) {
        int fits = 0;
        int breaks = MOST + 1;
        Optional<Limit.Broken> limit = Optional.empty();
        int step = 1;
        int at = start;
        while (breaks - fits > 1) {
            Optional<Limit.Broken> broken = broken(at, needed);
            fits = broken.isEmpty() ? at : fits;
            breaks = broken.isEmpty() ? breaks : at;
            limit = broken.isEmpty() ? limit : broken;
            at = next(fits, breaks, step);
            step *= 2;
        }
        return new Headroom(fits, left, fresh, limit, like);
    }

    /** A longer step where all so far fitted, or none did; the middle once there is one of each. */
    private static int next(int fits, int breaks, int step) {
        if (fits == 0) {
            return Math.max(1, breaks - step);
        }
        return breaks > MOST ? Math.min(MOST, fits + step) : (fits + breaks) / 2;
    }

    private double each() {
        return real.targetM3PerS().orElse(like.targetM3PerS().si());
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
        drops.add(more > 1 ? rest.withTarget((more - 1) * each()) : rest);
        return base.withDrops(drops);
    }
}
