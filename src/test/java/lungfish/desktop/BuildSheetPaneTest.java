package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.nio.file.Path;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet from which the room is built. */
final class BuildSheetPaneTest {
    private static final DocsWindows.Deaf DEAF = new DocsWindows.Deaf();

    private final Bench bench;

    /** Without a screen nothing can be painted: what the window asks to be painted is not heard. */
    @BeforeAll
    static void hearsNothing() {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(DEAF);
    }

    @AfterAll
    static void hearsAgain() throws Exception {
        DEAF.leave();
    }

    BuildSheetPaneTest(@TempDir Path folder) {
        bench = new Bench(folder, "garage-killifish");
        bench.pane().addNotify(); // a sheet in a window hears of changes
    }

    private String headline() {
        return bench.part(Paragraph.class, "build-headline").getText();
    }

    private void type(String field, String text) {
        JTextField there = bench.part(JTextField.class, field);
        there.setText(text);
        there.postActionEvent();
    }

    @Test
    void aPriceOfOnesOwnGoesIntoTheRoomAndIntoTheTotal() {
        bench.ask(Question.BUILD);
        String before = headline();
        type("price: needle-brass", "30"); // 23 to buy, of 3 EUR in the catalogue
        assertThat(bench.desk().room().building().price("needle-brass")).hasValue(30);
        assertThat(headline()).isNotEqualTo(before).endsWith("of parts");
    }

    @Test
    void aPriceBelowNothingIsRefusedAndToldWhy() {
        bench.ask(Question.BUILD);
        type("price: needle-brass", "-3");
        assertThat(bench.desk().room().building().price("needle-brass")).isEmpty();
        assertThat(bench.part(Paragraph.class, "build-trouble").getText()).startsWith("The price cannot be");
    }

    @Test
    void theLengthOfStockGoesIntoTheRoom() {
        bench.ask(Question.BUILD);
        type("Pipe is bought in", "2 m");
        assertThat(bench.desk().room().building().stockM()).hasValue(2);
    }
}
