package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import lungfish.NeedsDisplay;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window that nobody touches comes to rest: it neither lays out nor paints. */
@NeedsDisplay
final class QuietWindowTest {
    /** A window that lays itself out for ever asks again in every turn of the event queue. */
    private static final int QUIET_TURNS = 30;

    private static final int PATIENCE_TURNS = 3_000;

    @TempDir
    private Path folder;

    private final AtomicInteger asked = new AtomicInteger();
    private Optional<Windows> windows = Optional.empty();

    @BeforeEach
    void countWhatIsAsked() throws Exception {
        EventQueue.invokeAndWait(() -> RepaintManager.setCurrentManager(new Counting(asked)));
    }

    @AfterEach
    void close() throws Exception {
        EventQueue.invokeAndWait(() -> {
            windows.ifPresent(open -> open.all().forEach(MainWindow::dispose));
            RepaintManager.setCurrentManager(null);
        });
    }

    @Test
    void aWindowLeftAloneComesToRest() throws Exception {
        openAndWaitForThePlan();
        int quiet = 0;
        for (int turn = 0; turn < PATIENCE_TURNS && quiet < QUIET_TURNS; turn++) {
            int before = asked.get();
            EventQueue.invokeAndWait(() -> {});
            quiet = asked.get() == before ? quiet + 1 : 0;
        }
        assertThat(asked).as("the window has asked to be painted").hasPositiveValue();
        assertThat(quiet).as("turns of the queue without a wish to paint").isEqualTo(QUIET_TURNS);
    }

    private void openAndWaitForThePlan() throws Exception {
        Windows opened = Windows.open(folder, Optional.empty());
        windows = Optional.of(opened);
        CountDownLatch planned = new CountDownLatch(1);
        EventQueue.invokeAndWait(() -> {
            View view = opened.all().get(0).pane().view();
            view.onChange(() -> {
                if (view.desk().isCurrent()) {
                    planned.countDown();
                }
            });
        });
        assertThat(planned.await(60, TimeUnit.SECONDS)).isTrue();
    }

    /** Counts every wish to be laid out or painted. */
    private static final class Counting extends RepaintManager {
        private final AtomicInteger asked;

        Counting(AtomicInteger asked) {
            this.asked = asked;
        }

        @Override
        public synchronized void addInvalidComponent(JComponent one) {
            asked.incrementAndGet();
            super.addInvalidComponent(one);
        }

        @Override
        public void addDirtyRegion(JComponent one, int x, int y, int width, int height) {
            asked.incrementAndGet();
            super.addDirtyRegion(one, x, y, width, height);
        }
    }
}
