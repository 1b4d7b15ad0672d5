package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import lungfish.drawing.Shown;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Moved;
import lungfish.report.EverydayWords;
import lungfish.room.RackId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet that says what everyday disturbances do. */
final class EverydaySheetTest {
    @TempDir
    private Path folder;

    private Bench rackShut() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.pane().view().select(Selection.of(Part.rack(new RackId("C"))));
        bench.act(ShutChosen.class);
        return bench;
    }

    private static String text(Bench bench, String name) {
        return bench.part(JTextArea.class, name).getText();
    }

    private static List<Moved> others(Bench bench) {
        JList<?> list = bench.part(JList.class, "everyday-outlets");
        return java.util.stream.IntStream.range(0, list.getModel().getSize())
                .mapToObj(i -> (Moved) list.getModel().getElementAt(i))
                .toList();
    }

    /** Rack C has 8 of the 30 outlets. */
    @Test
    void theRackThatIsChosenIsShutAndTheOthersAreListed() {
        Bench bench = rackShut();

        assertThat(text(bench, "everyday-verdict")).isEqualTo("Retune");
        assertThat(text(bench, "everyday-because")).startsWith("8 outlets shut");
        assertThat(text(bench, "everyday-advice")).contains("Or open the bleed");
        assertThat(others(bench))
                .hasSize(22)
                .noneMatch(moved -> moved.need().seat().rack().id().text().equals("C"));
    }

    @Test
    void oneOfTheOthersLeadsToItsPlace() {
        Bench bench = rackShut();
        JList<?> list = bench.part(JList.class, "everyday-outlets");
        list.setSelectedIndex(0);
        Parts.press(list, "ENTER");

        assertThat(bench.pane().view().chosen())
                .contains(others(bench).get(0).need().id().part());
    }

    /** Five outlets of the garage's rack C run only sometimes. */
    @Test
    void withNothingChosenThoseAreShutThatRunOnlySometimes() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.act(ShutChosen.class);

        assertThat(text(bench, "everyday-because")).startsWith("5 outlets that run only sometimes shut");
    }

    private static void click(Bench bench, Kind kind) {
        bench.part(JToggleButton.class, "disturbance-" + kind).doClick(0);
    }

    /** Rack C has 8 outlets, each in a tank of its own. */
    @Test
    void theRackThatIsChosenIsHalfDrained() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.pane().view().select(Selection.of(Part.rack(new RackId("C"))));
        bench.act(HalfDrainChosen.class);

        assertThat(text(bench, "everyday-because")).startsWith("Half of the water out of 8 tanks with 8 outlets");
        assertThat(others(bench)).hasSize(30);
    }

    @Test
    void anotherChoiceOnTheDrawingIsAskedAtOnceAndNoneMeansTheWholeRoom() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.ask(Question.EVERYDAY);
        assertThat(text(bench, "everyday-because")).contains("of 30 tanks with 30 outlets");

        bench.pane().view().select(Selection.of(Part.rack(new RackId("A"))));

        assertThat(text(bench, "everyday-because")).doesNotContain("of 30 tanks");
        assertThat(text(bench, "everyday-whom")).contains("what is chosen");
    }

    @Test
    void whoFollowsTheListAsksOfNobodyElse() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.ask(Question.EVERYDAY);
        String before = text(bench, "everyday-because");
        JList<?> list = bench.part(JList.class, "everyday-outlets");
        list.setSelectedIndex(3);
        Parts.press(list, "ENTER");

        assertThat(bench.pane().view().chosenOutlet()).isPresent();
        assertThat(text(bench, "everyday-because")).isEqualTo(before);
    }

    @Test
    void everyDisturbanceIsOneClickAway() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.ask(Question.EVERYDAY);

        for (Kind kind : Kind.values()) {
            click(bench, kind);
            assertThat(text(bench, "everyday-whom")).startsWith(EverydayWords.name(kind));
            assertThat(text(bench, "everyday-verdict")).isNotEmpty().doesNotContain("…");
            assertThat(text(bench, "everyday-advice")).isNotEmpty();
        }
    }

    /** The room of the first pumps has no inlet filter. */
    @Test
    void whatCannotBeAnsweredIsSaid() {
        Bench bench = new Bench(folder, "starting-out");
        bench.ask(Question.EVERYDAY);
        click(bench, Kind.FILTER_CLOGGED);

        assertThat(text(bench, "everyday-verdict")).isEqualTo("Not to be told");
        assertThat(text(bench, "everyday-because")).contains("an inlet filter").doesNotContain("…");
        assertThat(others(bench)).isEmpty();
    }

    @Test
    void theAnswerIsOfTheTrialThatIsShown() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.pane().view().show(Shown.AS_IT_IS_SET);
        bench.pane().view().select(Selection.of(Part.rack(new RackId("C"))));
        bench.act(ShutChosen.class);
        var trials = bench.desk().plan().orElseThrow().trials().orElseThrow();

        assertThat(others(bench)).allMatch(moved -> {
            int at = bench.desk().plan().orElseThrow().demand().needs().indexOf(moved.need());
            return moved.before().equals(trials.is().drop(at));
        });
    }

    @Test
    void theMenuOnAPartOffersIt() {
        Bench bench = new Bench(folder, "garage-killifish");
        JPopupMenu menu = Menus.onRoom(bench.pane().acts());

        assertThat(java.util.stream.Stream.of(menu.getComponents())
                        .filter(JMenuItem.class::isInstance)
                        .map(item -> ((JMenuItem) item).getAction()))
                .contains(bench.pane().acts().the(ShutChosen.class))
                .contains(bench.pane().acts().the(HalfDrainChosen.class));
    }
}
