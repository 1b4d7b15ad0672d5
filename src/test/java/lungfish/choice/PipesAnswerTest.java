package lungfish.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import lungfish.plan.DemoPlans;
import lungfish.plan.Planner;
import org.junit.jupiter.api.Test;

/** Studying the pipes is one half of the work, looking for the cheapest build the other; both are told, and can be stopped. */
final class PipesAnswerTest {
    private static final Planner PLANNER = new Planner(DemoPlans.CATALOGUE);
    private static final double HALF = 0.5;

    private final List<Double> told = new ArrayList<>();

    private PipesAnswer answer() {
        return PipesAnswer.of(DemoPlans.room("garage-killifish"), PLANNER, (done, of) -> told.add((double) done / of))
                .orElseThrow();
    }

    @Test
    void whatIsToldOnlyGrowsAndIsNeverMoreThanAll() {
        answer();
        assertThat(told).isSorted().allMatch(share -> share >= 0 && share <= 1);
    }

    @Test
    void theStudyIsTheFirstHalf() {
        PipesAnswer answer = answer();
        int study = answer.study().results().size();
        assertThat(told.subList(0, study)).allMatch(share -> share < HALF);
        assertThat(told.get(study)).isEqualTo(HALF);
    }

    /** In this room some blower fits: each pipe is judged with it when all builds are looked at for what lasts. */
    @Test
    void theSearchIsToldAtLeastOncePerPipe() {
        PipesAnswer answer = answer();
        assertThat(told.stream().filter(share -> share > HALF).count())
                .isGreaterThan(answer.study().results().size());
    }

    @Test
    void theVeryLastStepCanStillBeStopped() {
        answer();
        int all = told.size();
        told.clear();
        assertThatThrownBy(() -> PipesAnswer.of(DemoPlans.room("garage-killifish"), PLANNER, (done, of) -> {
                    told.add(0.0);
                    if (told.size() == all) {
                        throw new CancellationException();
                    }
                }))
                .isInstanceOf(CancellationException.class);
    }
}
