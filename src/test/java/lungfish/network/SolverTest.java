package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A solver asked again and again. */
final class SolverTest {
    private static final double TWO_SOLVES = 1e-9;

    @Test
    void askedAgainItNeedsNoFurtherStep() {
        Solver solver = Solver.of(BenchNetwork.of(1));
        AsSet first = (AsSet) solver.asSet();
        AsSet second = (AsSet) solver.asSet();
        assertThat(first.iterations()).isBetween(2, 6);
        assertThat(second.iterations()).isZero();
        assertThat(second.totalFreeM3PerS()).isEqualTo(first.totalFreeM3PerS());
    }

    @Test
    void oneValveTurnedIsSolvedFromTheLastAnswerInFewerSteps() {
        Network network = BenchNetwork.of(3);
        Solver solver = Solver.of(network);
        int cold = ((AsSet) solver.asSet()).iterations();
        double[] valveK = network.drops().stream().mapToDouble(Drop::valveK).toArray();
        valveK[7] *= 1.5;
        AsSet warm = (AsSet) solver.asSet(valveK);
        assertThat(warm.iterations()).isLessThan(cold);
        List<Drop> drops = new ArrayList<>(network.drops());
        drops.set(7, drops.get(7).withValveK(valveK[7]));
        AsSet anew = Small.asSet(network.withDrops(drops));
        assertThat(warm.totalFreeM3PerS())
                .isCloseTo(anew.totalFreeM3PerS(), within(TWO_SOLVES * anew.totalFreeM3PerS()));
        assertThat(warm.network().drops().get(7).valveK()).isEqualTo(valveK[7]);
    }

    @Test
    void anEarlierAnswerKeepsItsFiguresWhenTheSolverGoesOn() {
        Network network = BenchNetwork.of(1);
        Solver solver = Solver.of(network);
        AsSet first = (AsSet) solver.asSet();
        double before = first.drop(3).freeM3PerS();
        solver.use(network.withDrops(
                network.drops().stream().map(drop -> drop.withDepth(0.1)).toList()));
        solver.asSet();
        assertThat(first.drop(3).freeM3PerS()).isEqualTo(before);
    }

    @Test
    void anotherShapeIsAnalysedAnew() {
        Solver solver = Solver.of(BenchNetwork.of(1));
        solver.asSet();
        Network other = RandomNetworks.roomLike(3);
        solver.use(other);
        assertThat(((AsSet) solver.asSet()).totalFreeM3PerS())
                .isEqualTo(Small.asSet(other).totalFreeM3PerS());
    }

    @Test
    void aRefusalDoesNotSpoilTheNextAnswer() {
        Network network = RandomNetworks.roomLike(3);
        Solver solver = Solver.of(network);
        List<Drop> free = network.drops().stream()
                .map(drop -> new Drop(
                        drop.id(),
                        drop.node(),
                        0.0,
                        0.0,
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        java.util.Optional.empty(),
                        0.1,
                        drop.targetM3PerS()))
                .toList();
        solver.use(network.withDrops(free));
        assertThat(solver.asSet()).isInstanceOf(Refused.class);
        solver.use(network);
        AsSet after = (AsSet) solver.asSet();
        assertThat(after.totalFreeM3PerS())
                .isCloseTo(Small.asSet(network).totalFreeM3PerS(), within(TWO_SOLVES * after.totalFreeM3PerS()));
    }

    @Test
    void theBenchmarkNetworkIsSolvedToItsPromiseAtEverySize() {
        for (int rooms : new int[] {1, 10, 100}) {
            Quality quality = Small.asSet(BenchNetwork.of(rooms)).quality();
            assertThat(quality.massImbalanceOverTotal()).isLessThan(1e-9);
            assertThat(quality.residualPa()).isLessThan(1e-6);
        }
    }
}
