package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JTextField;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.edit.Edit;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.logbook.Logs;
import lungfish.report.LogKinds;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Reading;
import lungfish.room.RunId;
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
        bench = new Bench(Desks.in(folder, Hands.ofTheCaller()).on(Logs.TODAY), "garage-killifish");
        bench.pane().addNotify(); // a sheet in a window hears of changes
    }

    private List<Reading> readings() {
        return bench.desk().room().log().readings();
    }

    private String says(String paragraph) {
        return bench.part(Paragraph.class, paragraph).getText();
    }

    private void readAYear() {
        bench.desk().apply(new Edit("A year", room -> Logs.aYear(room, 6_730)));
    }

    private <T> void choose(String choice, Predicate<T> wanted) {
        @SuppressWarnings("unchecked")
        Choice<T> there = bench.part(Choice.class, choice);
        there.choose(wanted);
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

    /** A quick hand presses the button before the field has heard that it lost the focus. */
    @Test
    void whatIsStillBeingTypedIsTaken() {
        open();
        bench.part(JTextField.class, "log: Seconds").setText("22.5");
        press("Write it down");
        assertThat(readings()).hasSize(1);
    }

    @Test
    void aNumberThatIsNoneIsAskedForAndNothingIsWritten() {
        open();
        bench.part(JTextField.class, "log: Seconds").setText("twenty");
        press("Write it down");
        assertThat(readings()).isEmpty();
        assertThat(bench.part(Paragraph.class, "log-trouble").getText()).startsWith("Type every number first");
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
    void anEmptyLogSaysWhatToWriteDownFirstAndOpensTheForm() {
        open();
        assertThat(says("log-says")).startsWith("Write down first");
        assertThat(bench.part(LogForm.class, "log-form").isVisible()).isTrue();
        assertThat(bench.part(Painted.class, "readings").isVisible()).isFalse();
    }

    /** The filter was changed on 2025-07-31, 180 days before 2026-01-27; today is 2026-02-01. */
    @Test
    void aYearSaysHowLongTheBlowerLastsAndWhatIsDueInWordsAndColour() {
        readAYear();
        open();
        assertThat(says("log-headline")).startsWith("The blower is enough until about 20");
        assertThat(bench.part(Painted.class, "readings").isVisible()).isTrue();
        assertThat(bench.part(LogForm.class, "log-form").isVisible()).isFalse();
        Paragraph filter = bench.part(Paragraph.class, "due: Inlet filter of the blower changed");
        assertThat(filter.getText()).isEqualTo("due since 2026-01-27");
        assertThat(filter.getForeground())
                .isEqualTo(bench.pane().view().look().palette().accent());
    }

    @Test
    void whatWasDoneIsDueNoLonger() {
        readAYear();
        open();
        choose("What was done", Service.Kind.FILTER_CHANGED::equals);
        press("Write the service down");
        assertThat(says("due: Inlet filter of the blower changed"))
                .isEqualTo("2026-07-31"); // 180 days after 2026-02-01
    }

    @Test
    void aGaugeMayBeAnywhereOnAPipe() {
        open();
        choose("What was read", LogKinds.GAUGE::equals);
        Choice<?> where = bench.part(Choice.class, "Where the gauge is");
        where.setSelectedIndex(1);
        type("log: Pressure", "6.4 kPa");
        press("Write it down");
        assertThat(readings()).isEmpty();
        assertThat(says("log-trouble")).contains("from the start of the pipe");

        type("log-along", "2.5 m");
        press("Write it down");
        assertThat(readings()).singleElement().satisfies(reading -> assertThat(reading.measured())
                .isEqualTo(new Reading.Gauge(Optional.of(new Outlet.OnRun(new RunId("loop"), 2.5)), 6400)));
    }

    /** What is wrong in a field that is not asked for holds nothing up. */
    @Test
    void aJarIsWrittenDownThoughAPlaceOfTheGaugeWasMistyped() {
        open();
        choose("What was read", LogKinds.GAUGE::equals);
        bench.part(Choice.class, "Where the gauge is").setSelectedIndex(1);
        type("log-along", "far");
        choose("What was read", LogKinds.JAR::equals);
        type("log: Seconds", "22");
        press("Write it down");
        assertThat(readings()).hasSize(1);
    }

    @Test
    void whatStoodShutMeanwhileIsWrittenDownWithIt() {
        open();
        bench.part(JCheckBox.class, "log-shut").doClick(0);
        bench.part(JCheckBox.class, "log-shut: 1").doClick(0);
        bench.pane().view().select(Selection.of(Part.outlet(new OutletId("C-1-1-a"))));
        bench.part(JCheckBox.class, "log-shut-outlets").doClick(0);
        type("log: Seconds", "22");
        press("Write it down");
        assertThat(readings()).singleElement().satisfies(reading -> assertThat(reading.shut())
                .isEqualTo(new Reading.Shut(
                        List.of(new OutletId("C-1-1-a")), List.of(new Outlet.OnRun(new RunId("loop"), 12.4)))));
        assertThat(bench.part(JCheckBox.class, "log-shut").isSelected()).isFalse();
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

    /** The gauge fell by 1.2 kPa in a year: the blower, a leak, or many clogged outlets; with a jar or two nobody can tell. */
    @Test
    void whatChangedIsToldAndTheRoomAsMeasuredOpens() {
        readAYear();
        open();
        assertThat(says("found-headline")).isNotEmpty();
        assertThat(says("found-next")).startsWith("Read next. ");
        press("log-open-measured");
        assertThat(bench.opened()).singleElement().satisfies(room -> {
            assertThat(room.name()).endsWith(", as measured");
            assertThat(room.ownClasses().blowers()).isNotEmpty();
        });
        assertThat(bench.desk().room().ownClasses().blowers()).isEmpty();
    }

    @Test
    void nothingIsSaidOfWhatChangedWhileNothingWasRead() {
        open();
        assertThat(bench.part(LogFound.class, "log-found").isVisible()).isFalse();
    }
}
