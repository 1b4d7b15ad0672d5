package lungfish.sure;

import java.util.List;
import java.util.Optional;
import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.headroom.Search;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Tuned;
import lungfish.plan.Basis;
import lungfish.sizing.Bench;
import lungfish.sizing.Fleet;
import lungfish.sizing.Needed;
import lungfish.sizing.Needs;

/**
 * Looks at one sample after the other, for one thread. The networks of the room and of its stages are analysed once, and
 * only take other numbers.
 */
final class Sampler {
    private final Ground ground;
    private final Site now;
    private final List<Site> later;
    private final Search search;
    private final int pattern;

    Sampler(Ground ground) {
        this.ground = ground;
        this.now = new Site(ground.now());
        this.later =
                ground.stages().stream().map(each -> new Site(each.basis())).toList();
        this.search = ground.now().search(ground.chosen());
        this.pattern = ground.now().piped().needs().indexOf(search.like());
    }

    /** One room of its own numbers, solved again and again. */
    private static final class Site {
        private final Basis basis;
        private final VariedRoom varied;
        private final Solver solver;

        Site(Basis basis) {
            this.basis = basis;
            Network network = basis.piped().network(Upkeep.DUE, basis.places().fixedSources(0));
            this.varied = new VariedRoom(network, basis.piped().needs());
            this.solver = Solver.of(network);
        }

        /** What this room needs; empty where it cannot be solved, which no room that could be solved as it is should see. */
        Optional<Needed> needed(Widths widths, Draws draws, int sample) {
            solver.use(varied.network(widths, draws, sample));
            return solver.tuned()
                    .match(asSet -> Optional.<Tuned>empty(), Optional::of, refused -> Optional.<Tuned>empty())
                    .map(tuned -> Needs.of(basis.piped(), tuned));
        }
    }

    /** Looks at one sample of a block. */
    void look(Draws draws, int sample, Tally into, int at) {
        Widths widths = ground.widths();
        VariedMachines machines = VariedMachines.of(widths, draws, sample);
        now.needed(widths, draws, sample).ifPresent(needed -> {
            Bench bench = bench(needed);
            Fleet fleet = machines.of(ground.chosen().fleet());
            search.use(needed.tuned().network(), now.varied.like(pattern, widths, draws, sample), fleet);
            into.chosen(at, needed, bench.verdict(fleet), search.find(needed, 0).outlets());
            for (int i = 0; i < ground.candidates().size(); i++) {
                into.candidate(
                        at,
                        i,
                        bench.verdict(machines.of(ground.candidates().get(i).fleet())));
            }
        });
        for (int i = 0; i < later.size(); i++) {
            int stage = i;
            Fleet fleet = machines.of(ground.stages().get(i).fleet());
            later.get(i)
                    .needed(widths, draws, sample)
                    .ifPresent(needed -> into.stage(at, stage, bench(needed).verdict(fleet)));
        }
    }

    private Bench bench(Needed needed) {
        return new Bench(needed, ground.now().asked(), ground::level, ground.now()::runtime, unranked -> 0);
    }

    /** The reserve of the chosen blower with only one input off, as a share of what the room needs. */
    double reserve(Widths only, Draws draws, int sample) {
        Fleet fleet = VariedMachines.of(only, draws, sample).of(ground.chosen().fleet());
        return now.needed(only, draws, sample)
                .map(needed -> fleet.freeAt(needed.pressurePa(), Wear.TIRED) / needed.freeM3PerS() - 1)
                .orElse(Double.NaN);
    }
}
