package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JTextField;
import lungfish.room.Reading;
import lungfish.room.Service;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet on which the log is written. */
final class LogSheetTest {
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

    LogSheetTest(@TempDir Path folder) {
        bench = new Bench(folder, "garage-killifish");
        bench.pane().addNotify(); // a sheet in a window hears of changes
    }

    private List<Reading> readings() {
        return bench.desk().room().log().readings();
    }

    private void open() {
        bench.ask(Question.LOG);
    }

    private void type(String field, String text) {
        JTextField there = bench.part(JTextField.class, field);
        there.setText(text);
        there.postActionEvent();
    }

    private void press(String button) {
        bench.part(JButton.class, button).doClick();
    }

    @Test
    void aJarIsWrittenDownWithItsOutletAndItsDay() {
        open();
        type("log-day", "2026-03-01");
        type("log: Seconds", "22.5");
        press("Write it down");
        assertThat(readings()).singleElement().satisfies(reading -> {
            assertThat(reading.on()).hasToString("2026-03-01");
            assertThat(reading.measured()).isInstanceOfSatisfying(Reading.Jar.class, jar -> {
                assertThat(jar.s()).isEqualTo(22.5);
                assertThat(jar.outlet()).hasToString("A-1-1-a");
            });
        });
    }

    @Test
    void aDayThatIsNoneIsToldAndNothingIsWritten() {
        open();
        type("log-day", "yesterday");
        type("log: Seconds", "22");
        press("Write it down");
        assertThat(readings()).isEmpty();
        assertThat(bench.part(Paragraph.class, "log-trouble").getText()).startsWith("The day is not one");
        assertThat(bench.part(JTextField.class, "log: Seconds").getText()).startsWith("22");
    }

    @Test
    void aMissingNumberIsToldAndNothingIsWritten() {
        open();
        press("Write it down");
        assertThat(readings()).isEmpty();
        assertThat(bench.part(Paragraph.class, "log-trouble").getText()).contains("seconds");
    }

    @Test
    void whatWasWrittenCanBeDeletedAndBroughtBack() {
        open();
        type("log: Seconds", "22");
        press("Write it down");
        press("delete: r-1");
        assertThat(readings()).isEmpty();
        bench.desk().undo();

        assertThat(readings()).hasSize(1);
    }

    @Test
    void aServiceIsOfAllOutletsWhereNoneIsChosen() {
        open();
        press("Write the service down");
        assertThat(bench.desk().room().log().services()).singleElement().satisfies(service -> {
            assertThat(service.kind()).isEqualTo(Service.Kind.DEVICE_CLEANED);
            assertThat(service.outlets()).isEmpty();
        });
    }
}
