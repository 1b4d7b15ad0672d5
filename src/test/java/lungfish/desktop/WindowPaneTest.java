package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextField;
import lungfish.choice.BenchRow;
import lungfish.plan.Plan;
import lungfish.quantity.DisplayUnits;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.reason.Why;
import lungfish.room.Blower;
import lungfish.roomfile.DemoRooms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Facts about a window, found without a display: what it says, and what its actions do. */
final class WindowPaneTest {
    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench(folder, "basement-rainbows");
    }

    private static String headline(Bench bench, Subject subject) {
        return bench.part(JButton.class, subject.name()).getText();
    }

    @Test
    void aSwitchOfUnitsIsSeenInThePanels() {
        Bench bench = bench();
        bench.desk().showIn(DisplayUnits.METRIC);
        assertThat(headline(bench, Subject.DUTY)).endsWith(" kPa");
        bench.act(SwitchUnits.class);
        assertThat(headline(bench, Subject.DUTY)).endsWith(" psi");
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void takingABlowerFromTheListIsOneEdit() {
        Bench bench = bench();
        bench.ask(Question.BLOWERS);
        JList<?> list = bench.part(JList.class, "candidates");
        list.setSelectedIndex(1);
        BenchRow second = (BenchRow) list.getModel().getElementAt(1);
        bench.part(JButton.class, "take").doClick(0);
        assertThat(bench.desk().room().blowers(Blower.Role.PLANNED))
                .allMatch(blower -> blower.machine().equals(Optional.of(second.id())));
        bench.act(UndoEdit.class);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void aFindingLeadsToItsPlace() {
        Bench bench = bench();
        bench.act(ShowFindings.class);
        Finding finding = bench.desk().plan().orElseThrow().findings().stream()
                .filter(each -> each.where().kind() == PartId.Kind.OUTLET)
                .findFirst()
                .orElseThrow();
        JList<?> list = bench.part(JList.class, "findings");
        list.setSelectedValue(finding, false);
        Parts.press(list, "ENTER");
        assertThat(bench.pane().view().chosen()).contains(finding.where());
    }

    @Test
    void aFindingOfWaterThatRunsBackShowsItsWayUntilSomethingElseIsChosen() {
        Bench bench = bench();
        bench.act(ShowFindings.class);
        Finding finding = bench.desk().plan().orElseThrow().findings().stream()
                .filter(each -> each.code() == Code.SIPHON)
                .findFirst()
                .orElseThrow();
        JList<?> list = bench.part(JList.class, "findings");
        list.setSelectedValue(finding, false);
        Parts.press(list, "ENTER");
        View view = bench.pane().view();

        assertThat(view.led().water()).hasValueSatisfying(water -> assertThat(
                        water.way().from().outlet().outlet().id().part())
                .isEqualTo(finding.where()));
        view.choose(PartId.ROOM);
        assertThat(view.led().water()).isEmpty();
    }

    @Test
    void theFilterLeavesTheOutletsOfWhichTheWordsSpeak() {
        Bench bench = bench();
        OutletsTable table = bench.part(OutletsTable.class, "outlets");
        bench.part(JTextField.class, "filter").setText("spawning always");
        assertThat(table.getRowCount()).isBetween(1, 69);
        for (int row = 0; row < table.getRowCount(); row++) {
            assertThat(((OutletRow) table.getValueAt(row, 0)).seat().tank().name())
                    .containsIgnoringCase("spawning");
        }
    }

    @Test
    void aBrokenFileIsToldAsAListAndTheRoomStays() throws IOException {
        Bench bench = bench();
        String before = bench.desk().room().name();
        Path broken = Files.writeString(folder.resolve("broken.room.json"), "{\"name\": 7}");
        bench.answers().open = Optional.of(broken);
        bench.act(OpenRoom.class);
        assertThat(bench.part(Paragraph.class, "problems").getText()).contains("/name: ");
        assertThat(bench.desk().room().name()).isEqualTo(before);
        bench.part(JButton.class, "back").doClick(0);
        assertThat(bench.pane().side().isSheetOpen()).isFalse();
    }

    @Test
    void aRoomThatIsNotSavedIsNotLostWithoutAsking() {
        Bench bench = bench();
        bench.desk().apply(lungfish.edit.BlowerEdits.shutTheBleed());
        bench.answers().unsaved = Asking.Unsaved.STAY;
        bench.pane().files().openDemo("starting-out");
        assertThat(bench.desk().isChanged()).isTrue();
        bench.answers().unsaved = Asking.Unsaved.DROP;
        bench.pane().files().openDemo("starting-out");
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void whatIsSavedFirstIsSafeBeforeTheNextRoomComes() {
        Bench bench = bench();
        bench.desk().apply(lungfish.edit.BlowerEdits.shutTheBleed());
        bench.answers().unsaved = Asking.Unsaved.SAVE;
        bench.answers().save = Optional.of(folder.resolve("kept.room.json"));
        bench.pane().files().openDemo("starting-out");
        assertThat(folder.resolve("kept.room.json")).content().contains("Basement rainbows");
        assertThat(bench.desk().file()).isEmpty();
    }

    @Test
    void aRoomWithoutOutletsOffersTheDemoRooms() throws IOException {
        Bench bench = bench();
        String empty =
                """
                {"format": "lungfish-room", "version": 1, "name": "Empty", "display_units": "metric",
                 "shell": {"length_m": 4, "width_m": 3, "height_m": 2.4}}""";
        bench.pane().files().open(Files.writeString(folder.resolve("empty.room.json"), empty));
        assertThat(bench.desk().room().name()).isEqualTo("Empty");
        assertThat(headline(bench, Subject.DUTY)).isEqualTo("Not known yet");
        bench.part(JButton.class, "demo starting-out").doClick(0);
        assertThat(bench.desk().room().seats()).isNotEmpty();
    }

    @Test
    void threeAnswersMakeARoomWithAPlanInOneEdit() {
        Bench bench = bench();
        bench.act(NewRoom.class);
        bench.part(JTextField.class, "Length of the room").setText("18 ft");
        bench.part(JTextField.class, "Width of the room").setText("4 m");
        bench.part(JTextField.class, "Number of tanks").setText("20");
        bench.part(JButton.class, "set-up").doClick(0);
        assertThat(bench.desk().room().seats()).hasSize(20);
        assertThat(bench.desk().room().shell().lengthM()).isEqualTo(5.4864, within(1e-9)); // 18 ft of 0.3048 m
        assertThat(bench.desk().plan().flatMap(Plan::duty)).isPresent();
        bench.act(UndoEdit.class);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void anAnswerThatIsNotUnderstoodIsKeptAndExplained() {
        Bench bench = bench();
        bench.act(NewRoom.class);
        JTextField length = bench.part(JTextField.class, "Length of the room");
        length.setText("18 fathoms");
        bench.part(JButton.class, "set-up").doClick(0);
        assertThat(bench.desk().room().racks()).isEmpty();
        assertThat(bench.part(Paragraph.class, "quick-trouble").getText()).contains("fathoms");
        bench.act(SwitchUnits.class);
        assertThat(length.getText()).isEqualTo("18 fathoms");
        length.setText("18 ft");
        bench.part(JButton.class, "set-up").doClick(0);
        assertThat(bench.desk().room().racks()).isNotEmpty();
    }

    @Test
    void halfATankIsNotANumberOfTanks() {
        Bench bench = bench();
        bench.act(NewRoom.class);
        bench.part(JTextField.class, "Number of tanks").setText("2.5");
        bench.part(JButton.class, "set-up").doClick(0);
        assertThat(bench.desk().room().racks()).isEmpty();
        assertThat(bench.part(Paragraph.class, "quick-trouble").getText()).contains("whole number");
    }

    @Test
    void moreTanksThanFitAreToldWithTheNumberThatDoes() {
        Bench bench = bench();
        bench.act(NewRoom.class);
        bench.part(JTextField.class, "Number of tanks").setText("900");
        bench.part(JButton.class, "set-up").doClick(0);
        assertThat(bench.part(Paragraph.class, "quick-trouble").getText()).matches("Only \\d+ such tanks fit .*");
    }

    private static List<String> whys(Bench bench) {
        return Parts.all(bench.pane().side())
                .filter(WhyBlock.class::isInstance)
                .map(block -> block.getAccessibleContext().getAccessibleName())
                .toList();
    }

    @Test
    void aCellOfTheTableSaysWhy() {
        Bench bench = bench();
        OutletsTable table = bench.part(OutletsTable.class, "outlets");
        int gets = OutletColumn.ALL.indexOf(OutletColumn.GETS);
        table.changeSelection(3, gets, false, false);
        Parts.press(table, "ENTER");
        assertThat(whys(bench)).hasSizeGreaterThan(4).first().isEqualTo("Why " + Parts.cellText(table, 3, gets) + "?");
    }

    @Test
    void theChosenOutletSaysWhyAndNothingElseDoes() {
        Bench bench = bench();
        Act why = bench.pane().acts().the(AskWhyOutlet.class);
        JButton button = bench.part(JButton.class, "why-outlet");
        assertThat(why.isEnabled() || button.isVisible()).isFalse();
        bench.pane()
                .view()
                .choose(bench.desk().room().seats().get(0).outlet().id().part());
        assertThat(why.isEnabled() && button.isVisible()).isTrue();
        button.doClick(0);
        assertThat(whys(bench)).hasSizeGreaterThan(4);
    }

    /** Its unit would be what is cut. */
    @Test
    void aHeadlineIsNeverWiderThanItsPanel() {
        Bench bench = bench();
        JButton duty = bench.part(JButton.class, Subject.DUTY.name());
        float wide = duty.getFont().getSize2D();
        bench.pane().view().inWindowOf(500);
        int sidePx = bench.pane().view().sidePx();
        assertThat(duty.getFontMetrics(duty.getFont()).stringWidth(duty.getText()))
                .isLessThan(sidePx);
        assertThat(duty.getFont().getSize2D()).isLessThan(wide);
    }

    static Stream<String> demos() {
        return DemoRooms.NAMES.stream();
    }

    /** What the two ways cost over the years has no panel; every other figure of a plan is explained by exactly one. */
    @ParameterizedTest
    @MethodSource("demos")
    void everyWhyBelongsToOnePanel(String demo) {
        Plan plan = new Bench(folder, demo).desk().plan().orElseThrow();
        for (Why why : plan.whys()) {
            long panels = Stream.of(Subject.values())
                    .filter(subject -> subject.whys(plan).contains(why))
                    .count();
            boolean isCost = why.figure().startsWith("cost of");
            assertThat(panels).as(why.figure()).isEqualTo(isCost ? 0 : 1);
        }
    }
}
