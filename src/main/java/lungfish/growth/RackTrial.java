package lungfish.growth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.demand.Need;
import lungfish.demand.Upkeep;
import lungfish.edit.BlowerEdits;
import lungfish.headroom.Fits;
import lungfish.headroom.Newcomer;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.piping.Spot;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.room.Rack;
import lungfish.room.Room;
import lungfish.sizing.Candidate;

/** Tries one planned rack in the room as it is now: with its outlets at their own taps, and all of them at other places. */
final class RackTrial {
    /** A rack is not placed to the centimetre, m. */
    private static final double EVERY_M = 1;

    /** Pressures that differ by less than this share nobody feels: common practice, no source. */
    private static final double SAME_SHARE = 0.005;

    private final Rack rack;
    private final Newcomer newcomer;
    private final Optional<Basis> grown;

    RackTrial(Planner planner, Basis now, Candidate blower, Newcomer newcomer, Rack rack) {
        this.rack = rack;
        this.newcomer = newcomer;
        Room room = BlowerEdits.settle(blower.kind()).of(now.room());
        this.grown = planner.basis(Grown.with(room, each -> each.id().equals(rack.id())), OptionalDouble.of(EVERY_M));
    }

    /** Whether it fits, and where best; empty where the grown room cannot be solved, or the rack has no outlets. */
    Optional<RackFit> fit(Progress progress) {
        int outlets =
                (int) rack.tanks().flatMap(tank -> tank.outlets().stream()).count();
        return outlets == 0 ? Optional.empty() : grown.map(basis -> fit(basis, outlets, progress));
    }

    private RackFit fit(Basis basis, int outlets, Progress progress) {
        Candidate blower = basis.chosen();
        Fits own = fits(basis, blower);
        Optional<RackFit.Best> best = best(basis, progress).flatMap(node -> basis.rehung(this::isOfRack, node)
                .map(rehung -> place(basis, node, fits(rehung, rehung.chosen()))));
        return new RackFit(
                rack.id(),
                outlets,
                Breaks.of(basis, blower).stream().findFirst(),
                own,
                best.filter(place ->
                        HeadroomMap.isWorthAWord(own.outlets(), place.fits().outlets())));
    }

    private boolean isOfRack(Need need) {
        return need.seat().rack().id().equals(rack.id());
    }

    private Fits fits(Basis basis, Candidate blower) {
        Network network = basis.needed().tuned().network();
        String node = network.drops().get(basis.needed().tuned().indexDrop()).node();
        return basis.search(blower, newcomer).at(node, basis.needed(), 1);
    }

    private static RackFit.Best place(Basis basis, String node, Fits fits) {
        Spot spot = Objects.requireNonNull(basis.piped().spots().get(node));
        return new RackFit.Best(spot.run().orElseThrow(), spot.alongM(), spot.place(), fits);
    }

    /** The node with the least needed pressure; empty where none is clearly better than the rack's own taps. */
    private Optional<String> best(Basis basis, Progress progress) {
        Network own = basis.piped().network(Upkeep.DUE, basis.places().fixedSources(0));
        Solver solver = Solver.of(own);
        double leastPa = (1 - SAME_SHARE) * basis.needed().pressurePa();
        Optional<String> best = Optional.empty();
        List<String> nodes = Mapping.onPipe(basis);
        for (int i = 0; i < nodes.size(); i++) {
            progress.at(i, nodes.size());
            solver.use(own.withDrops(basis.piped().rehung(own.drops(), this::isOfRack, nodes.get(i))));
            double pa = solver.tuned().match(asSet -> Double.NaN, Tuned::requiredGaugePa, refused -> Double.NaN);
            if (pa < leastPa) {
                leastPa = pa;
                best = Optional.of(nodes.get(i));
            }
        }
        return best;
    }
}
