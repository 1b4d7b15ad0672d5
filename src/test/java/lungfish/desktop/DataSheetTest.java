package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JTextField;
import lungfish.catalogue.BlowerClass;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Typing a blower from its data sheet, on the real parts of a window. */
final class DataSheetTest {
    @TempDir
    private Path folder = Path.of("");

    private Bench bench = new Bench(Path.of(""), "basement-rainbows");

    @BeforeEach
    void openTheSheet() {
        bench = new Bench(folder, "basement-rainbows");
        bench.ask(Question.BLOWERS);
        bench.part(JButton.class, "data-sheet").doClick(0);
    }

    private void type(String field, String text) {
        bench.part(JTextField.class, field).setText(text);
    }

    private void typeAll() {
        type("blower-name", "Garage find");
        PointsTable points = bench.part(PointsTable.class, "points");
        TextClip.put("0 kPa\t160 L/min\n10 kPa\t120 L/min\n20 kPa\t0 L/min\n");
        points.changeSelection(0, 0, false, false);
        Parts.press(points, "ctrl V");
        type("slot-WATTS", "110 W");
        type("slot-PRICE", "40");
        type("slot-CONTINUOUS", "2.5 psi");
    }

    private List<BlowerClass> own() {
        return bench.desk().room().ownClasses().blowers();
    }

    @Test
    void aBlowerThatIsTypedStandsOnTheBenchAndCanBeUndone() {
        typeAll();
        assertThat(verdict()).startsWith("In this room it");
        bench.part(JButton.class, "keep-blower").doClick(0);

        assertThat(own()).extracting(BlowerClass::name).containsExactly("Garage find");
        assertThat(bench.part(BenchList.class, "candidates")
                        .bench()
                        .orElseThrow()
                        .row("own-garage-find"))
                .isPresent();
        bench.act(UndoEdit.class);
        assertThat(own()).isEmpty();
    }

    private String verdict() {
        return bench.part(Paragraph.class, "draft-verdict").getText();
    }

    @Test
    void whatIsWrongIsSaidAsItIsTypedAndNothingCanBeKept() {
        typeAll();
        bench.part(PointsTable.class, "points").setValueAt("170 L/min", 1, 1);

        assertThat(bench.part(Paragraph.class, "curve-trouble").getText()).startsWith("Row 2: the flow rises");
        assertThat(bench.part(JButton.class, "keep-blower").isEnabled()).isFalse();
        assertThat(bench.part(PointsTable.class, "points").getValueAt(1, 1)).isEqualTo("170 L/min");
    }

    @Test
    void aWrongFieldSaysWhyToWhoeverCannotSeeIt() {
        typeAll();
        type("slot-CONTINUOUS", "30 kPa");

        assertThat(bench.part(JTextField.class, "slot-CONTINUOUS")
                        .getAccessibleContext()
                        .getAccessibleDescription())
                .contains("its curve ends at");
    }

    @Test
    void anOwnBlowerCanBeChangedAndRemoved() {
        typeAll();
        bench.part(JButton.class, "keep-blower").doClick(0);
        choose("own-garage-find");
        bench.part(JButton.class, "change-own").doClick(0);
        type("slot-PRICE", "60");
        bench.part(JButton.class, "keep-blower").doClick(0);
        assertThat(own()).extracting(BlowerClass::price).containsExactly(60.0);

        choose("own-garage-find");
        bench.part(JButton.class, "remove-own").doClick(0);
        assertThat(own()).isEmpty();
    }

    @Test
    void whatIsTypedAndNotKeptIsThereAgainWhenTheSheetIsOpenedAgain() {
        typeAll();
        bench.part(JButton.class, "back").doClick(0);
        openAgain();
        assertThat(bench.part(JTextField.class, "blower-name").getText()).isEqualTo("Garage find");
        assertThat(bench.part(PointsTable.class, "points").getValueAt(1, 1)).isEqualTo("120 L/min");

        bench.ask(Question.SURE);
        openAgain();
        assertThat(bench.part(JTextField.class, "slot-PRICE").getText()).isEqualTo("40");
        bench.part(JButton.class, "keep-blower").doClick(0);
        bench.part(JButton.class, "data-sheet").doClick(0);
        assertThat(bench.part(JTextField.class, "blower-name").getText()).isEmpty();
    }

    @Test
    void oneWhoStartsOverHasAnEmptySheetAndAChangedBlowerAsItIs() {
        typeAll();
        bench.part(JButton.class, "start-over").doClick(0);
        assertThat(bench.part(JTextField.class, "blower-name").getText()).isEmpty();
        assertThat(bench.part(JButton.class, "start-over").isEnabled()).isFalse();

        typeAll();
        bench.part(JButton.class, "keep-blower").doClick(0);
        choose("own-garage-find");
        bench.part(JButton.class, "change-own").doClick(0);
        type("slot-PRICE", "60");
        bench.part(JButton.class, "start-over").doClick(0);
        assertThat(bench.part(JTextField.class, "slot-PRICE").getText()).startsWith("40");
    }

    private void openAgain() {
        bench.ask(Question.BLOWERS);
        bench.part(JButton.class, "data-sheet").doClick(0);
    }

    private void choose(String id) {
        BenchList list = bench.part(BenchList.class, "candidates");
        list.setSelectedValue(list.bench().orElseThrow().row(id).orElseThrow(), false);
    }
}
