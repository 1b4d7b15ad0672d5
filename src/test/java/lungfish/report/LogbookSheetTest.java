package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lungfish.document.Document.Section;
import lungfish.document.Part;
import lungfish.logbook.Logbook;
import lungfish.logbook.Logs;
import lungfish.measured.MeasuredRoom;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;

/** What the log of a room says. */
final class LogbookSheetTest {
    /** The gauge of this room's first start (its plan runs at 6.73 kPa). */
    private static final double FROM_PA = 6_730;

    private static Section section(Room room) {
        Plan plan = new Planner(DemoPlans.CATALOGUE).plan(room);
        Logbook logbook = Logbook.of(plan, DemoPlans.CATALOGUE, Logs.TODAY);
        return LogbookSheet.of(
                plan,
                logbook,
                MeasuredRoom.of(plan, DemoPlans.CATALOGUE, logbook.today()),
                Quantities.in(DisplayUnits.METRIC));
    }

    private static List<String> paragraphs(Section section) {
        return section.parts().stream()
                .filter(Part.Paragraph.class::isInstance)
                .map(part -> ((Part.Paragraph) part).text())
                .toList();
    }

    private static Part.Grid grid(Section section, String key) {
        return section.parts().stream()
                .filter(Part.Grid.class::isInstance)
                .map(Part.Grid.class::cast)
                .filter(grid -> grid.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> row(Part.Grid grid, String begins) {
        return grid.rows().stream()
                .map(row -> row.stream().map(Part.Cell::text).toList())
                .filter(row -> row.get(0).startsWith(begins))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aYearOfFallingGaugesSaysWhenTheBlowerIsTooWeak() {
        Section section = section(Logs.aYear(DemoPlans.room("garage-killifish"), FROM_PA));

        assertThat(paragraphs(section).get(0))
                .matches(
                        "The blower will fall below what the room needs about 20\\d\\d-\\d\\d-\\d\\d; one in ten fall before"
                                + " 20\\d\\d-\\d\\d-\\d\\d, one in ten after 20\\d\\d-\\d\\d-\\d\\d\\. When it was last read it gave \\d+ % of what it gives"
                                + " new; the room needs \\d+ %\\.");
        assertThat(section.parts()).anyMatch(Part.Picture.class::isInstance);
    }

    /** The filter was changed on 2025-07-31, 180 days before 2026-01-27; today is 2026-02-01. */
    @Test
    void whatIsOverdueSaysSo() {
        Part.Grid due = grid(section(Logs.aYear(DemoPlans.room("garage-killifish"), FROM_PA)), "due");

        assertThat(row(due, "Inlet filter").subList(2, 5)).containsExactly("2025-07-31", "2026-01-27", "overdue");
        assertThat(row(due, "Drain").get(2)).isEqualTo("never");
    }

    @Test
    void anEmptyLogSaysWhatItNeeds() {
        Section section = section(DemoPlans.room("starting-out"));

        assertThat(paragraphs(section)).singleElement().asString().contains("cannot be told yet");
        assertThat(section.parts()).noneMatch(Part.Picture.class::isInstance);
    }
}
