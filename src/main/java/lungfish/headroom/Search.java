package lungfish.headroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import lungfish.blower.Wear;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.piping.PipedRoom;
import lungfish.sizing.Asked;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;
import lungfish.sizing.Needed;
import lungfish.sizing.Running;

/**
 * Finds how many outlets still fit at a place of the pipe, by halving. The new outlets are two leaves in the network: one
 * real drop, which says what pressure such an outlet wants there, and one leaf that takes the air of all the others. So the
 * network keeps its shape, however many they are, and is analysed once for each place.
 */
public final class Search {
    /** No room is asked about more new outlets than this. */
    public static final int MOST = 4096;

    private static final Total NO_AIR = new Total(Double.NaN, 0);

    private final Function<Running, Optional<Limit.Broken>> further;
    private final Asked asked;
    private final PipedRoom room;
    private final Newcomer newcomer;
    private final String indexNode;
    private final Solver solver;
    private Ceiling ceiling;
    private Fleet fleet;
    private Network base;
    private Drop pattern;

    /** What the whole room needs with the new outlets on. */
    private record Total(double pressurePa, double freeM3PerS) {}

    /**
     * A search for room for outlets of a kind.
     *
     * @param further limits beyond flow, pressure, rating and heat (noise, battery), judged where the tired machine runs, as in the headline
     */
    public Search(
            PipedRoom room,
            Fleet fleet,
            Needed needed,
            Asked asked,
            Function<Running, Optional<Limit.Broken>> further,
            Newcomer newcomer) {
        this.room = room;
        this.asked = asked;
        this.further = further;
        this.newcomer = newcomer;
        this.fleet = fleet;
        this.ceiling = new Ceiling(fleet, asked, further);
        this.base = room.network(Upkeep.DUE, fleet.fixedSources(0));
        this.indexNode = base.drops().get(needed.tuned().indexDrop()).node();
        this.pattern = pattern();
        this.solver = Solver.of(base);
    }

    /**
     * Takes other numbers of the same room: the headline's outlets stay at their tap, and are like what their pattern is now.
     *
     * @param changed of the same shape, devices due
     * @param machines at the same places
     */
    public void use(Network changed, Fleet machines) {
        base = changed;
        fleet = machines;
        ceiling = new Ceiling(machines, asked, further);
        pattern = pattern();
    }

    /** The same, the new outlets like another drop. */
    public void use(Network changed, Drop like, Fleet machines) {
        use(changed, machines);
        pattern = like;
    }

    /** The outlet that the new ones are like. */
    public Need like() {
        return newcomer.like();
    }

    private Drop pattern() {
        Drop there = base.drops().get(room.needs().indexOf(newcomer.like()));
        return newcomer.isLikeThere()
                ? there
                : room.otherwise(there, newcomer.like(), newcomer.device(), newcomer.depthM())
                        .withTarget(newcomer.targetM3PerS());
    }

    /** The headline: such outlets hung where the worst-served one hangs. */
    public Headroom find(Needed needed, double freshFreeM3PerS) {
        double left = fleet.freeAt(needed.pressurePa(), Wear.TIRED) - needed.freeM3PerS();
        Fits fits = at(indexNode, needed, (int) Math.min(MOST, left / each()));
        return new Headroom(fits.outlets(), left, freshFreeM3PerS, fits.limit(), newcomer.like());
    }

    private double each() {
        return pattern.targetM3PerS().orElse(newcomer.targetM3PerS());
    }

    /**
     * How many fit at a node.
     *
     * @param needed what the room needs as it is
     * @param guess a number that may be near, as it is at the next place of the pipe; it changes the work, not the answer
     */
    public Fits at(String node, Needed needed, int guess) {
        Optional<Limit.Broken> now = ceiling.broken(needed.pressurePa(), needed.freeM3PerS());
        if (now.isPresent()) {
            return new Fits(0, needed.pressurePa(), now);
        }
        Count count = new Count(node, new Total(needed.pressurePa(), needed.freeM3PerS()));
        int outlets = LastThatHolds.find(guess, MOST, count::fits);
        return new Fits(outlets, count.fitting.pressurePa(), count.broken);
    }

    /** The numbers of new outlets at a node, asked one after the other; keeps what the last of each kind said. */
    private final class Count {
        private final String node;
        private Total fitting;
        private Optional<Limit.Broken> broken = Optional.empty();

        Count(String node, Total now) {
            this.node = node;
            this.fitting = now;
        }

        boolean fits(int more) {
            Total total = total(node, more);
            Optional<Limit.Broken> limit = Search.this.broken(total);
            broken = limit.isPresent() ? limit : broken;
            fitting = limit.isPresent() ? fitting : total;
            return limit.isEmpty();
        }
    }

    private Total total(String node, int more) {
        solver.use(with(node, more));
        return solver.tuned()
                .match(
                        asSet -> NO_AIR,
                        tuned -> new Total(tuned.requiredGaugePa(), tuned.totalFreeM3PerS()),
                        refused -> NO_AIR);
    }

    private Optional<Limit.Broken> broken(Total total) {
        return Double.isNaN(total.pressurePa())
                ? Optional.of(Limit.PRESSURE.broken(0, fleet.shutPa(Wear.TIRED)))
                : ceiling.broken(total.pressurePa(), total.freeM3PerS());
    }

    private Network with(String node, int more) {
        List<Drop> drops = new ArrayList<>(base.drops());
        drops.add(new Drop(
                "one more",
                node,
                pattern.valveKOpen(),
                pattern.valveKOpen(),
                pattern.airline(),
                pattern.check(),
                pattern.device(),
                pattern.depthM(),
                pattern.targetM3PerS()));
        drops.add(theOthers(node, more > 1 ? OptionalDouble.of((more - 1) * each()) : OptionalDouble.empty()));
        return base.withDrops(drops);
    }

    private static Drop theOthers(String node, OptionalDouble target) {
        return new Drop("the others", node, 1, 1, Optional.empty(), Optional.empty(), Optional.empty(), 0, target);
    }
}
