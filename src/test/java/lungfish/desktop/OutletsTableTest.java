package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextField;
import lungfish.drawing.Shown;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Seat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The outlets table as one types into it. */
final class OutletsTableTest {
    private static final double ROUNDING_M = 1e-9;

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "starting-out");
    private OutletsTable table = bench.part(OutletsTable.class, "outlets");

    @BeforeEach
    void theBasementIsOpen() {
        bench = new Bench(folder, "basement-rainbows");
        bench.desk().showIn(DisplayUnits.METRIC);
        table = bench.part(OutletsTable.class, "outlets");
    }

    private static int at(OutletColumn column) {
        return OutletColumn.ALL.indexOf(column);
    }

    private void go(int row, OutletColumn column) {
        table.changeSelection(row, at(column), false, false);
    }

    private void choose(int from, int to, OutletColumn column) {
        go(from, column);
        table.changeSelection(to, at(column), false, true);
    }

    /** What the key does in the table, or in the field that is open in it. */
    private void press(String key) {
        Optional<CellField> field = table.input().field();
        Parts.press(field.isPresent() ? field.get() : table, key);
    }

    private void type(String text) {
        press("F2");
        field().setText(text);
    }

    private CellField field() {
        return table.input().field().orElseThrow(() -> new AssertionError("nothing is typed into"));
    }

    private Outlet outlet(int row) {
        OutletId id = table.outlet(row).id();
        return bench.desk().room().seats().stream()
                .map(Seat::outlet)
                .filter(outlet -> outlet.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private double depthM(int row) {
        return outlet(row).depthM().orElseThrow();
    }

    private Optional<String> toUndo() {
        return bench.desk().history().toUndo();
    }

    @Test
    void aDepthIsTypedInAnyUnitAndIsSeenAtOnce() {
        go(0, OutletColumn.DEPTH);
        type("8 in");
        press("ENTER");
        assertThat(depthM(0)).isCloseTo(8 * 0.0254, within(ROUNDING_M));
        assertThat(Parts.cellText(table, 0, at(OutletColumn.DEPTH))).isEqualTo("20.3 cm");
        assertThat(table.leadRow()).as("goes down").isEqualTo(1);
        assertThat(toUndo()).contains("Set depth of outlet " + table.outlet(0).id());
    }

    @Test
    void whatIsNotUnderstoodStaysAndIsExplainedAtTheCell() {
        go(0, OutletColumn.DEPTH);
        Outlet before = outlet(0);
        type("8 inchs");
        press("ENTER");
        assertThat(table.isEditing()).isTrue();
        assertThat(field().getText()).isEqualTo("8 inchs");
        assertThat(bench.part(Paragraph.class, "cell-trouble").getText()).contains("8 inchs");
        press("ESCAPE");
        assertThat(table.isEditing()).isFalse();
        assertThat(outlet(0)).isEqualTo(before);
        assertThat(table.input().trouble()).isEmpty();
    }

    @Test
    void deeperThanTheWaterIsExplainedInTheReadersUnits() {
        go(0, OutletColumn.DEPTH);
        type("9 m");
        press("ENTER");
        assertThat(table.input().trouble())
                .contains("900 cm below the water line")
                .contains("Raise the outlet");
    }

    @Test
    void oneValueIsTypedIntoAllChosenRows() {
        choose(0, 3, OutletColumn.TARGET);
        type("1.1 L/min");
        press("ctrl ENTER");
        for (int row = 0; row < 4; row++) {
            assertThat(outlet(row).flow().targetM3PerS().orElseThrow()).isCloseTo(1.1e-3 / 60, within(1e-12));
        }
        assertThat(toUndo()).contains("Set target of 4 outlets");
        bench.act(UndoEdit.class);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void enterTakesTheOneRowAndTabLeadsToTheNextInput() {
        choose(0, 3, OutletColumn.TARGET);
        double second = outlet(1).flow().targetM3PerS().orElseThrow();
        table.changeSelection(0, at(OutletColumn.TARGET), false, false);
        type("1.1 L/min");
        press("TAB");
        assertThat(outlet(1).flow().targetM3PerS()).hasValue(second);
        assertThat(table.column(table.getEditingColumn()))
                .as("what it gets is an answer")
                .isEqualTo(OutletColumn.MOST);
    }

    @Test
    void aDeviceIsChosenByPartOfItsName() {
        go(0, OutletColumn.DEVICE);
        type("small spo");
        press("ENTER");
        assertThat(outlet(0).device()).isEqualTo("sponge-small");
    }

    @Test
    void aTankIsRenamedInItsCell() {
        go(0, OutletColumn.TANK);
        type("Nursery");
        press("ENTER");
        assertThat(table.outlet(0).seat().tank().name()).isEqualTo("Nursery");
        assertThat(toUndo().orElseThrow()).startsWith("Rename tank");
    }

    @Test
    void anAnswerIsNotTypedButSaysWhy() {
        go(0, OutletColumn.GETS);
        press("F2");
        assertThat(table.isEditing()).isFalse();
        assertThat(bench.part(Line.class, "table-hint").getText()).startsWith("Gets is an answer of the plan");
        press("ENTER");
        assertThat(bench.pane().side().isSheetOpen()).isTrue();
    }

    @Test
    void howFarAValveIsOpenIsTypedOnlyAsItIsSet() {
        go(0, OutletColumn.VALVE);
        press("F2");
        assertThat(table.isEditing()).isFalse();
        bench.pane().view().show(Shown.AS_IT_IS_SET);
        type("35 %");
        press("ENTER");
        assertThat(outlet(0).valve().orElseThrow().opening().orElseThrow()).isCloseTo(0.35, within(1e-12));
    }

    @Test
    void fillingDownGivesTheOthersWhatTheFirstHas() {
        go(2, OutletColumn.DEPTH);
        type("12 cm");
        press("ENTER");
        choose(2, 5, OutletColumn.DEPTH);
        bench.act(FillDown.class);
        assertThat(List.of(depthM(2), depthM(3), depthM(4), depthM(5))).containsOnly(0.12);
        assertThat(toUndo()).contains("Fill down depth over 4 outlets");
    }

    @Test
    void theRowsChosenAreThoseOfTheRoom() {
        List<OutletId> three = List.of(
                table.outlet(1).id(), table.outlet(4).id(), table.outlet(6).id());
        bench.pane().view().select(Selection.of(three.stream().map(Part::outlet).toList()));
        assertThat(table.getSelectedRows()).containsExactly(1, 4, 6);
        choose(2, 4, OutletColumn.DEPTH);
        assertThat(bench.pane().view().selection().parts())
                .containsExactlyInAnyOrder(
                        Part.outlet(table.outlet(2).id()),
                        Part.outlet(table.outlet(3).id()),
                        Part.outlet(table.outlet(4).id()));
        int all = table.getRowCount();
        bench.pane().view().attempt(lungfish.edit.Deleting::of);
        assertThat(table.getRowCount()).isEqualTo(all - 3);
    }

    @Test
    void aBlockIsCopiedAndPastedElsewhere() {
        go(0, OutletColumn.DEPTH);
        type("11 cm");
        press("ENTER");
        go(1, OutletColumn.DEPTH);
        type("13 cm");
        press("ENTER");
        choose(0, 1, OutletColumn.DEPTH);
        table.addColumnSelectionInterval(at(OutletColumn.DEPTH), at(OutletColumn.GETS));
        press("ctrl C");
        assertThat(TextClip.text().lines().findFirst().orElseThrow()).startsWith("11 cm\t");
        go(4, OutletColumn.DEPTH);
        press("ctrl V");
        assertThat(List.of(depthM(4), depthM(5))).containsExactly(0.11, 0.13);
        assertThat(outlet(5).flow().targetM3PerS()).isEqualTo(outlet(1).flow().targetM3PerS());
        assertThat(toUndo()).contains("Paste into 2 outlets");
    }

    @Test
    void whatComesBackFromASpreadsheetUnderHeadingsFindsItsOutlets() {
        String first = table.outlet(0).id().text();
        String third = table.outlet(2).id().text();
        TextClip.put("Outlet\tGets\tDepth\n" + third + "\t9 L/min\t14 cm\n" + first + "\t\t15 cm\n");
        bench.pane().view().chooseNothing();
        press("ctrl V");
        assertThat(List.of(depthM(0), depthM(2))).containsExactly(0.15, 0.14);
    }

    @Test
    void aBlockWithBadCellsWaitsForTheKeepersWord() {
        go(0, OutletColumn.DEPTH);
        double before = depthM(1);
        TextClip.put("14 cm\nwet\n15 cm\n");
        press("ctrl V");
        assertThat(bench.desk().isChanged()).as("nothing is done yet").isFalse();
        assertThat(Parts.cellText(table, 0, at(OutletColumn.DEPTH)))
                .as("as it would be")
                .isEqualTo("14 cm");
        assertThat(Parts.cellText(table, 1, at(OutletColumn.DEPTH))).isEqualTo("× wet");
        assertThat(bench.part(Line.class, "table-hint").getText()).startsWith("1 of 3 cells cannot be taken.");
        JList<?> told = bench.part(JList.class, "bad-cells");
        assertThat(told.getModel().getElementAt(0).toString())
                .startsWith("× " + table.outlet(1).id() + ", Depth: 'wet'");
        bench.part(JButton.class, "take-good").doClick(0);
        assertThat(List.of(depthM(0), depthM(1), depthM(2))).containsExactly(0.14, before, 0.15);
        bench.act(UndoEdit.class);
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void aBlockThatIsLeftIsForgotten() {
        go(0, OutletColumn.DEPTH);
        String before = Parts.cellText(table, 0, at(OutletColumn.DEPTH));
        TextClip.put("14 cm\nwet\n");
        press("ctrl V");
        press("ESCAPE");
        assertThat(Parts.cellText(table, 0, at(OutletColumn.DEPTH))).isEqualTo(before);
        assertThat(bench.desk().history().toUndo()).isEmpty();
        assertThat(bench.part(JButton.class, "take-good").isVisible()).isFalse();
    }

    @Test
    void theRowThatIsTypedIntoStaysWhereItIs() {
        table.getRowSorter().toggleSortOrder(at(OutletColumn.DEPTH));
        table.getRowSorter().toggleSortOrder(at(OutletColumn.DEPTH)); // the deepest first
        OutletId first = table.outlet(0).id();
        go(0, OutletColumn.DEPTH);
        type("5 cm");
        press("ENTER");
        assertThat(table.outlet(0).id()).isEqualTo(first);
        assertThat(depthM(0)).isEqualTo(0.05);
    }

    @Test
    void nothingSaidIsTheAssumedValueAgain() {
        go(0, OutletColumn.DEPTH);
        press("BACK_SPACE");
        assertThat(outlet(0).depthM()).isEmpty();
        assertThat(OutletColumn.DEPTH.isAssumed(
                        table.outlet(0), bench.pane().view().reader()))
                .isTrue();
        TextClip.put("old");
        press("ctrl C");
        assertThat(TextClip.text()).as("nothing assumed is copied").isEqualTo("\n");
    }

    @Test
    void theFilterLeavesWhatIsTyped() {
        bench.part(JTextField.class, "filter").setText("spawning");
        go(1, OutletColumn.TARGET);
        OutletId second = table.outlet(1).id();
        type("0.9 L/min");
        press("ENTER");
        assertThat(table.outlet(1).id()).isEqualTo(second);
        assertThat(outlet(1).flow().targetM3PerS().orElseThrow()).isCloseTo(0.9e-3 / 60, within(1e-12));
    }

    @Test
    void seldomColumnsAreShownWhenAskedFor() {
        assertThat(table.getColumnCount()).isEqualTo(OutletColumn.USUAL.size());
        table.showMore(true);
        go(0, OutletColumn.ESSENTIAL);
        type("yes");
        press("ENTER");
        assertThat(outlet(0).essential()).contains(true);
        table.showMore(false);
        assertThat(table.getColumnCount()).isEqualTo(OutletColumn.USUAL.size());
    }
}
