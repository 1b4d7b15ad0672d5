package lungfish.closing;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lungfish.network.Answer;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;

/**
 * A network as it was set, and with some drops shut: every other valve, the bleeds among them, stays as it is.
 *
 * @param shut ids of the drops that are shut
 */
record Shutting(AsSet before, AsSet after, Set<String> shut) {
    Shutting {
        shut = Set.copyOf(shut);
    }

    /** Shuts them; empty where the network cannot be solved then, which one that was solved open rules out. */
    static Optional<Shutting> of(AsSet before, Set<String> shut) {
        return solved(before.network().withDrops(shut(before.network(), shut)))
                .map(after -> new Shutting(before, after, shut));
    }

    private static List<Drop> shut(Network network, Set<String> shut) {
        return network.drops().stream()
                .map(drop -> shut.contains(drop.id()) ? drop.withValveK(Drop.SHUT_K) : drop)
                .toList();
    }

    static Optional<AsSet> solved(Network network) {
        Answer answer = Solver.of(network).asSet();
        return answer.match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }

    /**
     * The same drops shut, the bleeds turned so that every source stands at the pressure where it stood before.
     *
     * @param outlets how many drops, the first, are outlets; the rest are bleeds
     */
    Optional<AsSet> held(int outlets) {
        Network network = after.network();
        List<Source> fixed = IntStream.range(0, network.sources().size())
                .<Source>mapToObj(i -> new Source.FixedPressure(
                        network.sources().get(i).id(),
                        network.sources().get(i).node(),
                        before.source(i).gaugePa()))
                .toList();
        return solved(network.withDrops(network.drops().subList(0, outlets)).withSources(fixed));
    }

    /** The highest pressure at any source. */
    static double highestPa(AsSet set) {
        return IntStream.range(0, set.network().sources().size())
                .mapToDouble(i -> set.source(i).gaugePa())
                .max()
                .orElse(0);
    }

    /** What all drops after the outlets let out, m³/s. */
    static double bledM3PerS(AsSet set, int outlets) {
        return IntStream.range(outlets, set.network().drops().size())
                .mapToDouble(i -> set.drop(i).freeM3PerS())
                .sum();
    }
}
