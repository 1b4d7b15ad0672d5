package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Among two thousand random networks there are some of every kind that is hard. */
final class HardKindsTest {
    private static final int LEAST = 20;

    private static Map<String, Predicate<Network>> kinds() {
        Map<String, Predicate<Network>> kinds = new LinkedHashMap<>();
        kinds.put("tiny bores", network -> network.pipes().stream().anyMatch(pipe -> pipe.boreM() < 1e-3));
        kinds.put("huge bores", network -> network.pipes().stream().anyMatch(pipe -> pipe.boreM() > 0.3));
        kinds.put("zero-length ties", network -> network.pipes().stream().anyMatch(Pipe::isTie));
        kinds.put("a hundred loops and more", network -> loops(network) >= 100);
        kinds.put("dead branches", HardKindsTest::hasDeadBranch);
        kinds.put("parts apart", network -> parts(network) > 1);
        kinds.put("a blower that gives hardly anything", network -> opens(network) < 1e-5);
        kinds.put("a blower that gives a thousand times a room's air", network -> opens(network) > 0.1);
        kinds.put("all drops closed", HardKindsTest::isShut);
        return kinds;
    }

    @Test
    void everyHardKindIsAmongThem() {
        kinds().forEach((name, is) -> assertThat(LongStream.range(0, 2000)
                        .mapToObj(RandomNetworks::nasty)
                        .filter(is)
                        .count())
                .as(name)
                .isGreaterThanOrEqualTo(LEAST));
    }

    private static int parts(Network network) {
        UnionFind found = new UnionFind(network.nodes().size());
        network.pipes()
                .forEach(pipe -> found.unite(
                        network.nodes().indexOf(pipe.from()), network.nodes().indexOf(pipe.to())));
        return found.groups();
    }

    /** Pipes beyond those of a tree. */
    private static int loops(Network network) {
        return network.pipes().size() - network.nodes().size() + parts(network);
    }

    /** A node that one pipe comes to, and from which no air goes. */
    private static boolean hasDeadBranch(Network network) {
        return network.nodes().stream()
                .anyMatch(node -> network.pipes().stream()
                                        .filter(pipe -> pipe.from().equals(node)
                                                || pipe.to().equals(node))
                                        .count()
                                == 1
                        && network.drops().stream()
                                .noneMatch(drop -> drop.node().equals(node))
                        && network.sources().stream()
                                .noneMatch(source -> source.node().equals(node)));
    }

    private static double opens(Network network) {
        return network.sources().stream()
                .filter(Source.Blower.class::isInstance)
                .mapToDouble(source -> ((Source.Blower) source).curve().flowAt(0))
                .findFirst()
                .orElse(1e-3);
    }

    private static boolean isShut(Network network) {
        return !network.drops().isEmpty() && network.drops().stream().allMatch(drop -> drop.valveK() >= Drop.SHUT_K);
    }
}
