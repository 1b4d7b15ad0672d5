package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.nio.file.Path;
import javax.swing.JCheckBox;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet on which the first start is ticked. */
final class FirstStartPaneTest {
    private static final DocsWindows.Deaf DEAF = new DocsWindows.Deaf();

    private final Bench bench;

    FirstStartPaneTest(@TempDir Path folder) {
        bench = new Bench(folder, "garage-killifish");
        bench.pane().addNotify(); // a sheet in a window hears of changes
    }

    /** Without a screen nothing can be painted: what the window asks to be painted is not heard. */
    @BeforeAll
    static void hearsNothing() {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(DEAF);
    }

    @AfterAll
    static void hearsAgain() throws Exception {
        DEAF.leave();
    }

    private String headline() {
        return bench.part(Paragraph.class, "start-headline").getText();
    }

    @Test
    void aTickGoesIntoTheLogAndBackAgain() {
        bench.ask(Question.START);
        assertThat(headline()).startsWith("0 of ");
        JCheckBox box = bench.part(JCheckBox.class, "tick: valve:A-1-1-a");
        box.doClick(0);
        assertThat(bench.desk().room().log().done("valve:A-1-1-a")).isPresent();
        assertThat(headline()).startsWith("1 of ");
        assertThat(bench.part(JCheckBox.class, "tick: valve:A-1-1-a")).isSameAs(box);
        bench.desk().undo();
        assertThat(bench.part(JCheckBox.class, "tick: valve:A-1-1-a").isSelected())
                .isFalse();
    }
}
