package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import lungfish.drawing.Shown;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.everyday.Moved;
import lungfish.room.RackId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet that says what the others do when some outlets are shut. */
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
        JList<?> list = bench.part(JList.class, "closing-others");
        return java.util.stream.IntStream.range(0, list.getModel().getSize())
                .mapToObj(i -> (Moved) list.getModel().getElementAt(i))
                .toList();
    }

    /** Rack C has 8 of the 30 outlets. */
    @Test
    void theRackThatIsChosenIsShutAndTheOthersAreListed() {
        Bench bench = rackShut();

        assertThat(text(bench, "closing-verdict")).isEqualTo("Retune");
        assertThat(text(bench, "closing-because")).startsWith("8 outlets shut");
        assertThat(text(bench, "closing-instead")).startsWith("Or open the bleed");
        assertThat(others(bench))
                .hasSize(22)
                .noneMatch(moved -> moved.need().seat().rack().id().text().equals("C"));
    }

    @Test
    void oneOfTheOthersLeadsToItsPlace() {
        Bench bench = rackShut();
        JList<?> list = bench.part(JList.class, "closing-others");
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

        assertThat(text(bench, "closing-because")).startsWith("5 outlets that run only sometimes shut");
    }

    @Test
    void whereNothingCanBeShutTheSheetSaysWhatToChoose() {
        Bench bench = new Bench(folder, "starting-out");
        bench.pane().view().choose(bench.desk().room().runs().get(0).id().part());
        bench.act(ShutChosen.class);

        assertThat(text(bench, "closing-verdict")).isEqualTo("Nothing to shut");
        assertThat(text(bench, "closing-because")).contains("Choose outlets");
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
                .contains(bench.pane().acts().the(ShutChosen.class));
    }
}
