package lungfish.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import lungfish.network.AsSet;
import lungfish.network.Drop;
import lungfish.network.DropFlow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class TrialsTest {
    /** Flows are solved so well that no sum of them misses by more than this share of all. */
    private static final double SOLVED = 1e-6;

    static Stream<Plan> demos() {
        return DemoPlans.names().map(DemoPlans::plan);
    }

    /** starting-out has one run, and the blower feeds its beginning. */
    @Test
    void theFirstPipeCarriesWhatAllOutletsTakeAsSet() {
        Plan plan = DemoPlans.plan("starting-out");
        double taken = plan.outlets().stream()
                .flatMap(outlet -> outlet.asSet().stream())
                .mapToDouble(DropFlow::freeM3PerS)
                .sum();
        assertThat(greatestInPipes(plan, plan.trials().orElseThrow().is())).isCloseTo(taken, within(SOLVED * taken));
    }

    @Test
    void theFirstPipeCarriesWhatAllOutletsWouldTake() {
        Plan plan = DemoPlans.plan("starting-out");
        double taken = plan.outlets().stream()
                .mapToDouble(outlet -> outlet.predictedM3PerS().orElseThrow())
                .sum();
        assertThat(greatestInPipes(plan, plan.trials().orElseThrow().shouldBe()))
                .isCloseTo(taken, within(SOLVED * taken));
    }

    private static double greatestInPipes(Plan plan, AsSet solved) {
        return plan.piped().orElseThrow().stretches().stream()
                .mapToDouble(stretch -> Math.abs(solved.pipe(stretch.pipe()).freeM3PerS()))
                .max()
                .orElseThrow();
    }

    /** A drop takes more than its target through its open valve just when its tap has more than that costs. */
    @ParameterizedTest
    @MethodSource("demos")
    void withItsValveOpenAnOutletHasSpareJustWhenItGetsItsTarget(Plan plan) {
        int[] open = IntStream.range(0, plan.outlets().size())
                .filter(i -> isOpen(plan.piped().orElseThrow().network().drops().get(i)))
                .toArray();
        for (int i : open) {
            OutletPlan outlet = plan.outlets().get(i);
            boolean isServed = outlet.asSet().orElseThrow().freeM3PerS()
                    >= outlet.need().targetM3PerS().si();
            assertThat(outlet.asSetSparePa().orElseThrow() >= 0)
                    .as(outlet.need().id().text())
                    .isEqualTo(isServed);
        }
    }

    private static boolean isOpen(Drop drop) {
        return drop.valveK() == drop.valveKOpen();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theIndexOutletAsSetHasTheLeastSpare(Plan plan) {
        double least = plan.outlets().stream()
                .mapToDouble(outlet -> outlet.asSetSparePa().orElseThrow())
                .min()
                .orElseThrow();
        assertThat(plan.outlets())
                .filteredOn(OutletPlan::asSetIndex)
                .singleElement()
                .satisfies(index -> assertThat(index.asSetSparePa()).hasValue(least));
    }
}
