package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import lungfish.desk.Later;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet that is left asks no longer. */
final class LeftSheetTest {
    @TempDir
    private Path folder;

    /** A question that never comes to its end by itself. */
    private static final class Endless extends SideSheet {
        private final transient Later<String, Integer> later;

        Endless(Bench bench, List<String> heard) {
            super(bench.pane().view(), bench.pane().side(), "Endless");
            Runnable leaving = () -> bench.pane().side().close();
            later = asking(
                    (question, progress) -> {
                        progress.at(0, 1);
                        leaving.run();
                        try {
                            progress.at(1, 1);
                        } catch (CancellationException stopped) {
                            heard.add("stopped");
                            throw stopped;
                        }
                        return 0;
                    },
                    () -> {});
        }
    }

    @Test
    void whatASheetAskedIsStoppedWhenTheSheetIsLeft() {
        Bench bench = new Bench(folder, "starting-out");
        List<String> heard = new ArrayList<>();
        Endless sheet = new Endless(bench, heard);
        bench.pane().side().open(sheet);

        sheet.later.ask("how long?");

        assertThat(heard).containsExactly("stopped");
        assertThat(sheet.later.isRunning()).isFalse();
        assertThat(sheet.later.answer()).isEmpty();
    }
}
