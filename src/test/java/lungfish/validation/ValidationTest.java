package lungfish.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

final class ValidationTest {
    private static final Path WRITTEN = Path.of("target", "validation.md");
    private static final Path COMMITTED = Path.of("docs", "validation.md");

    @TestFactory
    Stream<DynamicContainer> everyPublishedValueIsMetWithinItsTolerance() {
        return AllChecks.groups().stream()
                .map(group -> dynamicContainer(
                        group.title(),
                        group.comparisons().stream()
                                .map(each -> dynamicTest(each.row().id(), () -> assertWithin(each)))));
    }

    @Test
    void thePageInDocsIsWhatTheBuildComputes() throws IOException {
        String page = ValidationPage.of(AllChecks.groups(), NotComputed.all());
        Files.createDirectories(WRITTEN.toAbsolutePath().getParent());
        Files.writeString(WRITTEN, page);
        List<String> computed = page.lines().toList();
        List<String> committed = Files.exists(COMMITTED) ? Files.readAllLines(COMMITTED) : List.of();
        assertThat(firstDifference(committed, computed))
                .as("docs/validation.md is out of date: read target/validation.md and, when it is right,"
                        + " cp target/validation.md docs/validation.md")
                .isEmpty();
    }

    private static String firstDifference(List<String> committed, List<String> computed) {
        for (int i = 0; i < Math.max(committed.size(), computed.size()); i++) {
            String was = i < committed.size() ? committed.get(i) : "(end of page)";
            String is = i < computed.size() ? computed.get(i) : "(end of page)";
            if (!was.equals(is)) {
                return "line " + (i + 1) + "\ncommitted: " + was + "\ncomputed:  " + is;
            }
        }
        return "";
    }

    @Test
    void everyRowHasItsOwnIdAndEveryWayIsUsed() {
        Set<String> ids = new HashSet<>();
        for (CheckGroup group : AllChecks.groups()) {
            List<Comparison> rows = group.comparisons();
            rows.forEach(each ->
                    assertThat(ids.add(each.row().id())).as(each.row().id()).isTrue());
            assertThat(rows)
                    .extracting(each -> each.row().by())
                    .containsAll(group.ways().keySet());
        }
    }

    /** A value is beside ours or among the others, never in both: then one of the two would be forgotten. */
    @Test
    void whatIsSaidToBeHeldOtherwiseIsInNoGroup() {
        List<String> computed = AllChecks.groups().stream()
                .flatMap(group -> group.comparisons().stream())
                .map(each -> each.row().id())
                .toList();
        assertThat(NotComputed.all())
                .extracting(NotComputed::id)
                .isNotEmpty()
                .doesNotHaveDuplicates()
                .doesNotContainAnyElementsOf(computed);
    }

    private static void assertWithin(Comparison each) {
        PublishedRow row = each.row();
        assertThat(each.within())
                .as(
                        "%s: published %s %s, ours %s, tolerance %s (%s)",
                        row.what(),
                        row.printed(),
                        row.unit(),
                        each.ours(),
                        row.tolerance().text(row.unit()),
                        row.tolerance().why())
                .isTrue();
    }
}
