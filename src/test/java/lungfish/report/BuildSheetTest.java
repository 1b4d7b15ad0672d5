package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lungfish.build.BuildPlan;
import lungfish.document.Document;
import lungfish.document.Document.Section;
import lungfish.document.Part;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

final class BuildSheetTest {
    private static final Map<String, Document> SHEETS = new HashMap<>();

    private static Document sheet(String room) {
        return SHEETS.computeIfAbsent(room, name -> {
            Plan plan = DemoPlans.plan(name);
            return BuildSheet.of(
                    plan, DemoPlans.CATALOGUE, Quantities.in(plan.room().displayUnits()));
        });
    }

    private static Stream<Part.Grid> grids(Document sheet) {
        return sheet.sections().stream()
                .flatMap(section -> section.parts().stream())
                .filter(Part.Grid.class::isInstance)
                .map(Part.Grid.class::cast);
    }

    private static Part.Grid grid(Document sheet, String key) {
        return grids(sheet).filter(grid -> grid.key().equals(key)).findFirst().orElseThrow();
    }

    private static List<String> texts(Document sheet) {
        List<String> texts = new ArrayList<>(List.of(sheet.title(), sheet.subtitle()));
        for (Section section : sheet.sections()) {
            texts.add(section.title());
            section.parts().forEach(part -> texts.add(part.toString()));
        }
        return texts;
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void everySheetHasItsSectionsAndListsByTheirKeys(String room) {
        assertThat(sheet(room).sections())
                .extracting(Section::key)
                .containsExactly("drawings", "cautions", "parts", "cuts", "taps", "blower", "settings");
        assertThat(grids(sheet(room)))
                .extracting(Part.Grid::key)
                .containsExactly("parts", "cuts", "taps", "threads", "settings");
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void everyPlaceInASentenceIsFilledAndEveryRowIsWhole(String room) {
        assertThat(texts(sheet(room))).noneMatch(text -> text.matches("(?s).*\\{\\w+}.*"));
        grids(sheet(room)).forEach(grid -> assertThat(grid.rows())
                .allMatch(row -> row.size() == grid.columns().size()));
    }

    @ParameterizedTest
    @MethodSource("lungfish.plan.DemoPlans#names")
    void thePlasticPipeCarriesItsCautions(String room) {
        Section cautions = sheet(room).sections().get(1);
        assertThat(cautions.parts().toString())
                .contains("Rigid PVC under compressed air can shatter")
                .contains("Solvent cement and primer")
                .contains("Local codes");
    }

    @Test
    void otherSectionsGoBehindThoseOfTheSheet() {
        Plan plan = DemoPlans.plan("starting-out");
        Document sheet = BuildSheet.of(
                plan,
                BuildPlan.of(plan, DemoPlans.CATALOGUE),
                DemoPlans.CATALOGUE,
                Quantities.in(DisplayUnits.METRIC),
                List.of(new Section("start", "First start", true, List.of())));
        assertThat(sheet.sections().get(7).key()).isEqualTo("start");
    }

    /** 1.55 m of pipe; in the basement 0.1378 m of copper are 5.425 in, nearest 5 7/16. */
    @ParameterizedTest
    @CsvSource({"starting-out, 1550 mm", "basement-rainbows, 5 7/16 in"})
    void cutLengthsAreAsATapeReads(String room, String cut) {
        assertThat(grid(sheet(room), "cuts").rows())
                .anyMatch(row -> row.get(5).text().equals(cut));
    }

    /** 0.5 L at 0.6 L/min are 50 s, of which the worst-served outlet is told first. */
    @Test
    void theWorstServedOutletIsSetFirst() {
        List<Part.Cell> first = grid(sheet("starting-out"), "settings").rows().get(0);
        assertThat(first.get(1).text()).isEqualTo("A-2-2-b");
        assertThat(first.get(7).text()).isEqualTo("worst-served");
    }

    @Test
    void plannedRacksAreMarkedInTheDrawings() {
        assertThat(sheet("basement-rainbows").sections().get(0).parts().toString())
                .contains("Grow-out wall (planned: its taps are not in the lists)")
                .doesNotContain("Rack A (planned");
    }
}
