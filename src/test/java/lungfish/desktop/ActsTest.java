package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the actions of a window. */
final class ActsTest {
    @TempDir
    private Path folder;

    @Test
    void noTwoActionsShareAKey() {
        List<KeyStroke> keys = new Bench(folder, "starting-out")
                .pane().acts().all().stream()
                        .map(Act::key)
                        .filter(Objects::nonNull)
                        .toList();
        assertThat(keys).doesNotHaveDuplicates().hasSizeGreaterThan(15);
    }

    @Test
    void everyActionStandsInTheMenuBar() {
        WindowPane pane = new Bench(folder, "starting-out").pane();
        var bar = Menus.of(pane);
        assertThat(java.util.stream.IntStream.range(0, bar.getMenuCount())
                        .mapToObj(bar::getMenu)
                        .flatMap(ActsTest::actions))
                .containsAll(pane.acts().all());
    }

    private static java.util.stream.Stream<Object> actions(javax.swing.JMenu menu) {
        return java.util.Arrays.stream(menu.getMenuComponents()).flatMap(item -> {
            if (item instanceof javax.swing.JMenu inner) {
                return actions(inner);
            }
            return item instanceof javax.swing.JMenuItem leaf && leaf.getAction() != null
                    ? java.util.stream.Stream.of(leaf.getAction())
                    : java.util.stream.Stream.empty();
        });
    }
}
