package lungfish.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lungfish.piping.Stretch;
import lungfish.plan.DemoPlans;
import lungfish.room.Outlet;
import lungfish.room.RunId;
import org.junit.jupiter.api.Test;

/**
 * The garage's loop is 2 · (4.05 + 2.85) = 13.8 m round, with valves at 6.2 and 12.4 m; the copper joins it at 4.05 m. So 6.2 m of
 * the loop lie between the valves, away from the blower.
 */
final class SectionsTest {
    private static final RunId LOOP = new RunId("loop");
    private static final Outlet.OnRun ONE = new Outlet.OnRun(LOOP, 6.2);
    private static final Outlet.OnRun OTHER = new Outlet.OnRun(LOOP, 12.4);

    private final Sections sections = new Sections(
            Ground.of(DemoPlans.plan("garage-killifish"), DemoPlans.CATALOGUE).orElseThrow());

    private int far() {
        boolean[] reached = sections.reached(List.of(ONE, OTHER));
        return reached[0] ? 1 : 0;
    }

    @Test
    void twoValvesPartALoopInTwo() {
        assertThat(sections.valves()).containsExactlyInAnyOrder(ONE, OTHER);
        assertThat(sections.count()).isEqualTo(2);
    }

    @Test
    void oneValveAloneCutsNothingOffALoop() {
        assertThat(sections.reached(List.of(ONE))).containsOnly(true);
        assertThat(sections.reached(List.of())).containsOnly(true);
        assertThat(sections.reached(List.of(ONE, OTHER))).containsExactlyInAnyOrder(true, false);
    }

    @Test
    void theFarSectionIsThePipeBetweenTheValves() {
        List<Stretch> far = sections.stretches(far());

        assertThat(far).allMatch(stretch -> stretch.run().equals(LOOP));
        assertThat(far).allMatch(stretch -> stretch.fromM() >= 6.2 && stretch.toM() <= 12.4);
        assertThat(far.stream().mapToDouble(each -> each.toM() - each.fromM()).sum())
                .isCloseTo(6.2, within(1e-9));
    }
}
