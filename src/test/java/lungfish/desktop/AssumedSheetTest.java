package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.room.Outlet;
import lungfish.room.Room;
import lungfish.room.Seat;
import lungfish.roomfile.RoomWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is assumed is seen, and can be made one's own where it is seen. */
final class AssumedSheetTest {
    private static final String SPARE = "Spare pressure of the worst-served outlet, assumed";

    @TempDir
    private Path folder;

    private Bench bench = new Bench(Path.of(""), "garage-killifish");

    @BeforeEach
    void theGarageIsOpen() {
        bench = new Bench(folder, "garage-killifish");
        bench.act(ShowAssumed.class);
    }

    private Room room() {
        return bench.desk().room();
    }

    private String file() {
        return new String(RoomWriter.bytes(room()), StandardCharsets.UTF_8);
    }

    private JTextField field(String name) {
        return bench.part(JTextField.class, name);
    }

    private static String ghost(JTextField field) {
        return String.valueOf(field.getClientProperty("JTextField.placeholderText"));
    }

    private static JButton keep(JTextField field) {
        return (JButton) field.getClientProperty("JTextField.trailingComponent");
    }

    /** 15 assumptions, of which four are the same depth of four outlets: counted in the room's file by hand. */
    @Test
    void theTabCountsThem() {
        assertThat(bench.part(JToggleButton.class, "assumed-tab").getText()).isEqualTo("12 assumed");
    }

    @Test
    void aFieldShowsWhatIsAssumedAndTheFileDoesNotHoldIt() {
        assertThat(ghost(field(SPARE))).isEqualTo("0.50 kPa, assumed");
        assertThat(file()).doesNotContain("index_spare_pa");
    }

    @Test
    void anAssumedValueIsKeptAsOnesOwn() {
        keep(field(SPARE)).doClick();
        assertThat(room().wishes().indexSparePa()).hasValue(500);
        assertThat(file()).contains("\"index_spare_pa\": 500");
        assertThat(bench.part(JToggleButton.class, "assumed-tab").getText()).isEqualTo("11 assumed");
        bench.act(UndoEdit.class);
        assertThat(room().wishes().indexSparePa()).isEmpty();
        assertThat(bench.part(JToggleButton.class, "assumed-tab").getText()).isEqualTo("12 assumed");
    }

    @Test
    void anotherValueIsTypedInAnyUnit() {
        JTextField spare = field(SPARE);
        spare.setText("0.1 psi");
        spare.postActionEvent();
        assertThat(room().wishes().indexSparePa().orElseThrow())
                .isCloseTo(689.476, within(1e-3)); // 1 psi is 6894.76 Pa
    }

    @Test
    void whatCannotBeStaysToBeMended() {
        JTextField humidity = field("Relative humidity of the room, assumed");
        humidity.setText("140 %");
        humidity.postActionEvent();
        assertThat(room().climate().humidity()).isEmpty();
        assertThat(humidity.getText()).isEqualTo("140 %");
        assertThat(humidity.getAccessibleContext().getAccessibleDescription()).contains("140 %", "100 %");
    }

    @Test
    void whatIsAssumedOfSeveralOutletsIsSaidOfThemAll() {
        keep(field("Depth of the air release, assumed")).doClick();
        assertThat(room().seats().stream().map(Seat::outlet).map(Outlet::depthM))
                .allMatch(OptionalDouble::isPresent);
        assertThat(bench.desk().history().toUndo()).isPresent();
    }

    @Test
    void theFieldsOfAnOutletShowAndKeepItToo() {
        Outlet silent = room().seats().stream()
                .map(Seat::outlet)
                .filter(outlet -> outlet.depthM().isEmpty())
                .findFirst()
                .orElseThrow();
        bench.pane().view().select(Selection.of(Part.outlet(silent.id())));
        JTextField depth = field("Depth of its release");
        assertThat(ghost(depth)).isEqualTo("17 cm, assumed"); // 20 cm of water less 3 cm
        keep(depth).doClick();
        assertThat(room().seats().stream()
                        .map(Seat::outlet)
                        .filter(outlet -> outlet.id().equals(silent.id()))
                        .map(Outlet::depthM))
                .allSatisfy(there -> assertThat(there.orElseThrow()).isCloseTo(0.17, within(1e-9)));
    }

    @Test
    void anExplanationLetsOneSayWhatItAssumed() {
        bench.pane().side().ask(Subject.NOISE);
        JTextField absorption = Parts.find(
                        bench.pane().side(), JTextField.class, "Mean sound absorption of the room, assumed")
                .orElseThrow();
        absorption.setText("25 %");
        absorption.postActionEvent();
        assertThat(room().shell().absorption()).hasValue(0.25);
    }
}
