package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.NeedsDisplay;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the real window that need a display and nobody's hands. */
@NeedsDisplay
final class MainWindowTest {
    @TempDir
    private Path folder;

    private final WatchedQueue queue = WatchedQueue.here();
    private List<MainWindow> windows = List.of();

    @BeforeEach
    void open() throws Exception {
        Windows opened = Windows.open(folder, Optional.empty());
        queue.await("a plan in a window", () -> opened.all().stream()
                .anyMatch(window -> window.pane().view().desk().isCurrent()));
        EventQueue.invokeAndWait(() -> windows = opened.all());
    }

    @AfterEach
    void close() throws Exception {
        EventQueue.invokeAndWait(() -> windows.forEach(MainWindow::dispose));
    }

    /** On any screen a person has: the one of the build may be smaller than the window likes to be. */
    @Test
    void everyRegionOfTheWindowIsSeen() {
        WindowPane pane = windows.get(0).pane();
        assertThat(Stream.of(pane.center().canvas(), pane.side(), pane.below()).map(Component::getSize))
                .allMatch(size -> size.width > 100 && size.height > 50);
    }
}
