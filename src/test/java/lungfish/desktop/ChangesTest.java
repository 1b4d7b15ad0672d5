package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import lungfish.blower.Wear;
import lungfish.desk.Age;
import lungfish.edit.BlowerEdits;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** Which changes of a figure are told. */
final class ChangesTest {
    private static final Quantities METRIC = Quantities.in(DisplayUnits.METRIC);
    private static final Plan BEFORE = DemoPlans.plan("garage-killifish");

    /** Another machine, the last of the list, leaves other room to grow. */
    private static final Plan AFTER = new Planner(DemoPlans.CATALOGUE).plan(withLastOfTheList());

    private final Changes changes = new Changes(Subject.HEADROOM);

    private static Room withLastOfTheList() {
        var last = BEFORE.candidates().get(BEFORE.candidates().size() - 1);
        return BlowerEdits.choose(last.kind()).of(BEFORE.room());
    }

    private Optional<String> hear(Plan plan) {
        return changes.hear(plan, Age.OF_HEADLINES, METRIC);
    }

    private static String headline(Plan plan) {
        return new Glances(plan, Age.OF_HEADLINES, METRIC).of(Subject.HEADROOM).headline();
    }

    @Test
    void aChangedFigureTellsWhatItWas() {
        hear(BEFORE);
        assertThat(headline(AFTER)).isNotEqualTo(headline(BEFORE));
        assertThat(hear(AFTER)).contains(headline(BEFORE));
    }

    @Test
    void theFirstPlanIsNoChange() {
        assertThat(hear(BEFORE)).isEmpty();
    }

    @Test
    void aChangeIsToldOnce() {
        hear(BEFORE);
        hear(AFTER);
        assertThat(hear(AFTER)).isEmpty();
    }

    @Test
    void anotherRoomIsNoChange() {
        hear(BEFORE);
        assertThat(hear(DemoPlans.plan("starting-out"))).isEmpty();
    }

    @Test
    void otherUnitsAreNoChange() {
        Changes duty = new Changes(Subject.DUTY);
        duty.hear(BEFORE, Age.OF_HEADLINES, METRIC);
        assertThat(duty.hear(BEFORE, Age.OF_HEADLINES, Quantities.in(DisplayUnits.US)))
                .isEmpty();
    }

    @Test
    void anotherAgeToLookAtIsNoChange() {
        Changes duty = new Changes(Subject.DUTY);
        duty.hear(BEFORE, Age.OF_HEADLINES, METRIC);
        assertThat(duty.hear(BEFORE, Age.OF_HEADLINES.with(Wear.NEW), METRIC)).isEmpty();
    }
}
