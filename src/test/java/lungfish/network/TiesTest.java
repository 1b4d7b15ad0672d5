package lungfish.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

final class TiesTest {
    private static final double ROUNDING_PERCENT = 1e-9;

    @Test
    void aTieMakesItsNodesOne() {
        AsSet tied = Small.network()
                .fixed("a", 6000.0)
                .pipe("a", "b", 4.0, 0.015)
                .tie("b", "c")
                .add(Small.drop("d1", "b", 1e11))
                .add(Small.drop("d2", "c", 1e11))
                .asSet();
        AsSet one = Small.network()
                .fixed("a", 6000.0)
                .pipe("a", "b", 4.0, 0.015)
                .add(Small.drop("d1", "b", 1e11))
                .add(Small.drop("d2", "b", 1e11))
                .asSet();
        assertThat(tied.nodeGaugePa(2)).isEqualTo(tied.nodeGaugePa(1));
        assertThat(tied.drop(1).freeM3PerS()).isEqualTo(one.drop(1).freeM3PerS());
        // the tie carries what the drop behind it takes
        assertThat(tied.pipe(1).freeM3PerS()).isCloseTo(tied.drop(1).freeM3PerS(), withinPercentage(ROUNDING_PERCENT));
        assertThat(tied.pipe(1).dropPa()).isZero();
    }

    @Test
    void aRingOfTiesSharesItsAirEqually() {
        AsSet answer = Small.network()
                .fixed("a", 6000.0)
                .tie("a", "b")
                .tie("b", "c")
                .tie("c", "d")
                .tie("d", "a")
                .add(Small.drop("x", "c", 1e11))
                .asSet();
        double half = answer.totalFreeM3PerS() / 2.0;
        assertThat(answer.pipe(0).freeM3PerS()).isCloseTo(half, withinPercentage(ROUNDING_PERCENT));
        assertThat(answer.pipe(3).freeM3PerS()).isCloseTo(-half, withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void aVeryShortPipeIsNearlyATie() {
        AsSet shortPipe = Small.network()
                .fixed("a", 6000.0)
                .pipe("a", "b", 4.0, 0.015)
                .pipe("b", "c", 1e-9, 0.02)
                .add(Small.drop("d", "c", 1e11))
                .asSet();
        AsSet tie = Small.network()
                .fixed("a", 6000.0)
                .pipe("a", "b", 4.0, 0.015)
                .tie("b", "c")
                .add(Small.drop("d", "c", 1e11))
                .asSet();
        assertThat(shortPipe.nodeGaugePa(2)).isCloseTo(tie.nodeGaugePa(2), within(1e-6));
    }

    @Test
    void everyNodeOfATiedKnotIsInBalance() {
        AsSet answer = Small.network()
                .fixed("a", 6000.0)
                .tie("a", "b")
                .tie("b", "c")
                .tie("a", "c")
                .add(Small.drop("x", "b", 1e11))
                .add(Small.drop("y", "c", 1e10))
                .asSet();
        assertThat(answer.quality().massImbalanceOverTotal()).isLessThan(1e-14);
    }
}
