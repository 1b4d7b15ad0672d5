package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import lungfish.catalogue.DeviceClass;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.drawing.GrowthLaid;
import lungfish.edit.Part;
import lungfish.edit.StepEdits;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Stage;
import lungfish.room.RackId;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet on which a room grows: 26.5 L/min are left in the basement, where most outlets take 1.5. */
final class GrowthSheetTest {
    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder, "basement-rainbows");
        bench.ask(Question.GROWTH);
    }

    private String text(String name) {
        return bench.part(JTextArea.class, name).getText();
    }

    @SuppressWarnings("unchecked")
    private JList<Stage> stages() {
        return bench.part(JList.class, "stages");
    }

    @SuppressWarnings("unchecked")
    private void choose(String device) {
        Choice<Optional<DeviceClass>> choice = bench.part(Choice.class, "Device of the new outlets");
        for (int i = 0; i < choice.getItemCount(); i++) {
            if (choice.getItemAt(i).name().equals(device)) {
                choice.setSelectedIndex(i);
            }
        }
    }

    private QuantityField depth() {
        return bench.part(QuantityField.class, "depth");
    }

    private Optional<HeadroomMap> laid() {
        return bench.pane().view().growing().map(GrowthLaid::map);
    }

    @Test
    void theCountIsTheHeadline() {
        assertThat(text("growth-count")).isEqualTo("17 more outlets"); // 26.5 / 1.5
        assertThat(text("growth-where")).contains("the place does not matter");
    }

    /** The room's large sponges take 2.5 L/min each: of 26.5, 10 are fed. */
    @Test
    void anotherDeviceIsCountedAnew() {
        choose("Large sponge filter");
        assertThat(text("growth-count")).isEqualTo("10 more outlets");
    }

    /** 2 m of water are 19.6 kPa, more than the 17 kPa at which the blower is rated and the 3.45 psi that it bears. */
    @Test
    void whatIsTooDeepDoesNotFit() {
        depth().setText("2 m");
        depth().take();
        assertThat(text("growth-count")).isEqualTo("No more outlets");
        assertThat(text("growth-where")).startsWith("Not one more fits anywhere");
    }

    @Test
    void aDepthThatNobodyHasIsRefusedAndStays() {
        depth().setText("30 m");
        depth().take();
        assertThat(depth().trouble()).startsWith("A depth is between");
        assertThat(depth().getText()).isEqualTo("30 m");
        assertThat(text("growth-count")).isEqualTo("17 more outlets");
    }

    @Test
    void theTimeLineHasItsStages() {
        List<Stage.State> states = new ArrayList<>();
        for (int i = 0; i < stages().getModel().getSize(); i++) {
            states.add(stages().getModel().getElementAt(i).state());
        }
        assertThat(states).containsExactly(Stage.State.FITS, Stage.State.TIGHT, Stage.State.BREAKS);
        assertThat(text("growth-breaks")).isEqualTo("Step 2 breaks");
    }

    /** Whoever hears the list hears how a stage stands, and what mends it: the mark is only seen. */
    @Test
    void aStageSaysHowItStands() {
        Stage last = stages().getModel().getElementAt(2);
        AccessibleContext spoken = stages().getCellRenderer()
                .getListCellRendererComponent(stages(), last, 2, false, false)
                .getAccessibleContext();
        assertThat(spoken.getAccessibleName())
                .contains("Step 2, in two years", "Breaks: air", "Blue-eye wall", "Cheapest mend");
    }

    @Test
    void aStageLeadsToItsRacks() {
        stages().setSelectedIndex(2);
        stages().getActionForKeyStroke(KeyStroke.getKeyStroke("ENTER"))
                .actionPerformed(new ActionEvent(stages(), 0, ""));
        assertThat(bench.pane().view().selection().parts()).containsExactly(Part.rack(new RackId("X")));
    }

    @Test
    void anEditIsAnsweredAnew() {
        bench.part(JButton.class, "back").doClick(0);
        bench.pane().view().refused(StepEdits.come(bench.desk().room(), List.of(new RackId("X")), Optional.of(1)));
        bench.ask(Question.GROWTH);
        assertThat(stages().getModel().getSize()).isEqualTo(2);
        assertThat(text("growth-breaks")).isEqualTo("Step 1 breaks");
    }

    @Test
    void theMapLiesOverTheRoomWhileTheSheetIsOpen() {
        assertThat(laid()).map(HeadroomMap::most).contains(17);
        bench.part(JButton.class, "back").doClick(0);
        assertThat(laid()).isEmpty();
    }

    @Test
    void anotherSheetTakesTheMapAway() {
        bench.ask(Question.BLOWERS);
        assertThat(laid()).isEmpty();
    }

    /** Work ahead waits here until it is let go. */
    @Test
    void whatIsStoppedSaysSoAndGoesOnWhereAsked() {
        Deque<Runnable> ahead = new ArrayDeque<>();
        Hands now = Hands.ofTheCaller();
        Hands slow = new Hands(now.front(), now.planning(), now.disk(), now.keeping(), ahead::add);
        bench = new Bench(Desks.in(folder, slow), "basement-rainbows");
        bench.ask(Question.GROWTH);
        assertThat(text("growth-count")).isEqualTo("Counting …");

        bench.part(JButton.class, "stop").doClick(0);
        workOff(ahead);

        assertThat(text("growth-count")).isEqualTo("Not counted yet");
        assertThat(said()).contains("Stopped before it was worked out");
        assertThat(bench.part(JButton.class, "stop").getText()).isEqualTo("Work it out");

        bench.part(JButton.class, "stop").doClick(0);
        workOff(ahead);
        assertThat(text("growth-count")).isEqualTo("17 more outlets");
        assertThat(text("growth-breaks")).isEqualTo("Step 2 breaks");
    }

    private static void workOff(Deque<Runnable> ahead) {
        while (!ahead.isEmpty()) {
            ahead.removeFirst().run();
        }
    }

    private List<String> said() {
        return Parts.all(bench.pane().side())
                .filter(Line.class::isInstance)
                .map(part -> ((Line) part).getText())
                .toList();
    }
}
