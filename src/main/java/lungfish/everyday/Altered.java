package lungfish.everyday;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.network.Answer;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.Network;
import lungfish.network.Solver;
import lungfish.network.Source;

/** A network as it was set, and with some of its drops or machines changed; every valve and every bleed stands as it stood. */
record Altered(AsSet before, AsSet after) {
    /** Changes them; empty where the network cannot be solved then. */
    static Optional<Altered> of(AsSet before, List<Drop> drops, List<Source> sources) {
        return solved(before.network().withDrops(drops).withSources(sources)).map(after -> new Altered(before, after));
    }

    static Optional<AsSet> solved(Network network) {
        Answer answer = Solver.of(network).asSet();
        return answer.match(Optional::of, tuned -> Optional.empty(), refused -> Optional.empty());
    }

    /**
     * The changed network, the bleeds turned so that every source stands at the pressure where it stood before.
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
        return solved(unbled(network, outlets).withSources(fixed));
    }

    /** The changed network with its bleeds shut. */
    Optional<AsSet> unbled(int outlets) {
        return solved(unbled(after.network(), outlets));
    }

    /** Without the drops behind those of the outlets. */
    static Network unbled(Network network, int outlets) {
        return network.withDrops(network.drops().subList(0, outlets));
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
