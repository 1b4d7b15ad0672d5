package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.swing.JButton;
import javax.swing.JTextField;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.drawing.Palette;
import lungfish.edit.Edit;
import lungfish.room.Room;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is shown of an older room looks older, and nothing of it is taken, until the answer to the room as it is now is there. */
final class OlderRoomTest {
    @TempDir
    private Path folder = Path.of("");

    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private boolean isSlow;
    private Bench bench = new Bench(Path.of(""), "garage-killifish");

    @BeforeEach
    void open() {
        Hands now = Hands.ofTheCaller();
        Hands hands = new Hands(now.front(), this::work, now.disk(), now.keeping(), this::work);
        bench = new Bench(Desks.in(folder, hands), "garage-killifish");
        bench.pane().addNotify(); // a sheet in a window hears of changes
    }

    private void work(Runnable asked) {
        if (isSlow) {
            waiting.add(asked);
        } else {
            asked.run();
        }
    }

    private void changeTheRoom() {
        isSlow = true;
        bench.desk().apply(new Edit("Call it otherwise", room -> room.withName("Another name")));
    }

    private void workOff() {
        while (!waiting.isEmpty()) {
            waiting.removeFirst().run();
        }
    }

    private boolean isSoft(String paragraph) {
        Palette palette = bench.pane().view().look().palette();
        return bench.part(Paragraph.class, paragraph).getForeground().equals(palette.free());
    }

    @Test
    void noBlowerIsTakenFromTheOrderOfAnOlderRoom() {
        bench.ask(Question.BLOWERS);
        BenchList list = bench.part(BenchList.class, "candidates");
        list.setSelectedIndex(1);
        JButton take = bench.part(JButton.class, "take");
        assertThat(take.isEnabled()).isTrue();

        changeTheRoom();
        Room before = bench.desk().room();
        Parts.press(list, "ENTER");

        assertThat(take.isEnabled()).isFalse();
        assertThat(isSoft("stands")).isTrue();
        assertThat(bench.desk().room()).isEqualTo(before);
        workOff();
        assertThat(take.isEnabled()).isTrue();
        assertThat(isSoft("stands")).isFalse();
    }

    @Test
    void aBlowerThatIsTypedIsNotJudgedByAnOlderCurve() {
        bench.ask(Question.BLOWERS);
        bench.part(JButton.class, "data-sheet").doClick(0);
        type("blower-name", "Garage find");
        PointsTable points = bench.part(PointsTable.class, "points");
        points.setValueAt("0 kPa", 0, 0);
        points.setValueAt("160 L/min", 0, 1);
        points.setValueAt("20 kPa", 1, 0);
        points.setValueAt("0 L/min", 1, 1);
        type("slot-WATTS", "110 W");
        type("slot-PRICE", "40");
        type("slot-CONTINUOUS", "17 kPa");
        assertThat(verdict()).startsWith("In this room it");

        isSlow = true;
        points.setValueAt("150 L/min", 0, 1);

        assertThat(verdict()).isEqualTo("Being judged …");
        workOff();
        assertThat(verdict()).startsWith("In this room it");
    }

    private void type(String field, String text) {
        bench.part(JTextField.class, field).setText(text);
    }

    private String verdict() {
        return bench.part(Paragraph.class, "draft-verdict").getText();
    }

    @Test
    void whatWasShutInAnOlderPlanIsSoft() {
        bench.act(ShutChosen.class);
        assertThat(isSoft("everyday-verdict")).isFalse();

        changeTheRoom();

        assertThat(isSoft("everyday-verdict")).isTrue();
        workOff();
        assertThat(isSoft("everyday-verdict")).isFalse();
    }

    @Test
    void growthOfAnOlderRoomIsSoft() {
        bench.ask(Question.GROWTH);
        assertThat(isSoft("growth-count")).isFalse();

        changeTheRoom();

        assertThat(isSoft("growth-count")).isTrue();
        assertThat(isSoft("growth-breaks")).isTrue();
        workOff();
        assertThat(isSoft("growth-count")).isFalse();
    }

    @Test
    void todayBesideAnOlderPlanIsSoft() {
        bench.ask(Question.TODAY);
        assertThat(isSoft("verdict")).isFalse();

        changeTheRoom();

        assertThat(isSoft("verdict")).isTrue();
        assertThat(isSoft("because")).isTrue();
        assertThat(isSoft("Machines, each with its plug, planned")).isTrue();
        workOff();
        assertThat(isSoft("verdict")).isFalse();
    }
}
