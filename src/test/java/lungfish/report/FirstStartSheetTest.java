package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lungfish.document.Document.Section;
import lungfish.document.Part;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import lungfish.room.Rooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the first start says. */
final class FirstStartSheetTest {
    private static Section section(Room room, DisplayUnits units) {
        Plan plan = new Planner(DemoPlans.CATALOGUE).plan(room);
        return FirstStartSheet.of(plan, DemoPlans.CATALOGUE, Quantities.in(units));
    }

    private static List<Part.Step> steps(Section section) {
        return section.parts().stream()
                .filter(Part.Checklist.class::isInstance)
                .flatMap(part -> ((Part.Checklist) part).steps().stream())
                .toList();
    }

    private static Part.Step step(Section section, String key) {
        return steps(section).stream()
                .filter(step -> step.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aStepThatIsTickedInTheLogBearsItsDay() {
        Room room = DemoPlans.room("starting-out");
        Room ticked = room.withLog(room.log().ticked("leak-test", Optional.of(LocalDate.of(2026, 3, 4))));

        Section section = section(ticked, DisplayUnits.METRIC);

        assertThat(step(section, "leak-test").done()).contains("2026-03-04");
        assertThat(step(section, "blow-out").done()).isEmpty();
    }

    @Test
    void everyExpectedReadingHasItsUnitAndItsGiveOrTake() {
        Section section = section(DemoPlans.room("starting-out"), DisplayUnits.METRIC);

        assertThat(step(section, "valve:A-1-1-a").expected())
                .matches("Jar [0-9.]+ s ± [0-9.]+ s; gauge [0-9.]+ kPa ± [0-9.]+ kPa");
        assertThat(step(section(DemoPlans.room("starting-out"), DisplayUnits.US), "leak-test")
                        .expected())
                .matches("Gauge [0-9.]+ psi ± [0-9.]+ psi");
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void everyStepSaysWhatToDo(String room) {
        Section section = section(DemoPlans.room(room), DisplayUnits.METRIC);

        assertThat(section.key()).isEqualTo("start");
        assertThat(steps(section)).isNotEmpty().allSatisfy(step -> {
            assertThat(step.action()).isNotBlank();
            assertThat(step.detail()).endsWith(".");
        });
    }

    @Test
    void whereNothingCanBeStartedItSaysWhy() {
        Section section = section(Rooms.empty(), DisplayUnits.METRIC);

        assertThat(section.parts()).singleElement().isInstanceOf(Part.Paragraph.class);
    }
}
