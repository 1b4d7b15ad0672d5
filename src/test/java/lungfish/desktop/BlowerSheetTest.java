package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import lungfish.choice.BenchRow;
import lungfish.room.Blower;
import lungfish.room.Wishes.Wish;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The blower bench of a room in which the plan chooses, on the real parts of a window. */
final class BlowerSheetTest {
    @TempDir
    private Path folder = Path.of("");

    private Bench bench = new Bench(Path.of(""), "basement-rainbows");

    @BeforeEach
    void openTheBench() {
        bench = new Bench(folder, "basement-rainbows");
        bench.ask(Question.BLOWERS);
        list().setSize(640, 4000);
        list().doLayout();
    }

    /** What is in no window follows no edits. */
    private void openAnew() {
        bench.part(JButton.class, "back").doClick(0);
        bench.ask(Question.BLOWERS);
    }

    private BenchList list() {
        return bench.part(BenchList.class, "candidates");
    }

    private List<BenchRow> rows() {
        return IntStream.range(0, list().getModel().getSize())
                .mapToObj(list().getModel()::getElementAt)
                .toList();
    }

    private List<Wish> order() {
        return bench.desk().room().wishes().order();
    }

    /** A click at a place of a row, from its left edge. */
    private void click(int row, int x, int y) {
        Rectangle cell = list().getCellBounds(row, row);
        list().dispatchEvent(new MouseEvent(
                list(), MouseEvent.MOUSE_CLICKED, 0, 0, cell.x + x, cell.y + y, 1, false, MouseEvent.BUTTON1));
    }

    @Test
    void theArrowKeysMoveAWishAndTheMoveCanBeUndone() {
        Parts.press(bench.part(JButton.class, "wish-3"), "LEFT");

        // the demo says: smallest, quietest; the reserve stands before them
        assertThat(order()).startsWith(Wish.RESERVE, Wish.QUIETEST, Wish.SMALLEST);
        bench.act(UndoEdit.class);
        assertThat(order()).containsExactly(Wish.SMALLEST, Wish.QUIETEST);
    }

    @Test
    void theBenchIsInTheOrderOfTheWishes() {
        Parts.press(bench.part(JButton.class, "wish-4"), "HOME"); // cheap to buy
        openAnew();

        double cheapest = rows().stream()
                .filter(row -> row.candidate().serves())
                .mapToDouble(row -> row.candidate().kind().price())
                .min()
                .orElseThrow();
        assertThat(rows().get(0).candidate().kind().price()).isEqualTo(cheapest);
    }

    @Test
    void aWishAtTheEdgeStaysWhereItIs() {
        Parts.press(bench.part(JButton.class, "wish-1"), "LEFT");

        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void machinesForOtherMainsAreHiddenUntilTheyAreAskedFor() {
        assertThat(rows()).allMatch(row -> row.candidate().suitsMains());

        bench.part(JCheckBox.class, "this-mains").doClick(0);

        assertThat(rows()).anyMatch(row -> !row.candidate().suitsMains());
    }

    @Test
    void oneClickTakesABlower() {
        BenchRow second = rows().get(1);
        click(1, list().getCellBounds(1, 1).width - 30, 12);

        assertThat(bench.desk().room().blowers(Blower.Role.PLANNED))
                .allMatch(blower -> blower.machine().equals(Optional.of(second.id())));
    }

    @Test
    void aClickOnTheWordsOfABlowerTakesNothing() {
        click(1, 200, 12);

        assertThat(list().marked()).isEmpty();
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void theBoxMarksForComparingAndTheFourthMarkPutsOutTheFirst() {
        for (int row = 0; row < 4; row++) {
            click(row, 16, 30);
        }

        assertThat(list().marked())
                .extracting(BenchRow::id)
                .containsExactlyElementsOf(
                        rows().subList(1, 4).stream().map(BenchRow::id).toList());
    }

    @Test
    void comparedSideBySideTheBestOfALineIsMarked() {
        click(0, 16, 30);
        click(1, 16, 30);
        String first = rows().get(0).id();
        String second = rows().get(1).id();
        bench.part(JButton.class, "compare").doClick(0);

        // the second is larger: it draws more, and keeps more in reserve
        assertThat(cell("Draws, tired, " + first)).endsWith("best");
        assertThat(cell("Draws, tired, " + second)).doesNotContain("best");
        assertThat(cell("Reserve, tired, " + second)).endsWith("best");
    }

    private String cell(String name) {
        return bench.part(Paragraph.class, name).getText();
    }

    @Test
    void whatIsComparedCanBeTakenThere() {
        click(0, 16, 30);
        click(1, 16, 30);
        String second = rows().get(1).id();
        bench.part(JButton.class, "compare").doClick(0);
        bench.part(JButton.class, "take " + second).doClick(0);

        assertThat(bench.desk().room().blowers(Blower.Role.PLANNED))
                .allMatch(blower -> blower.machine().equals(Optional.of(second)));
    }

    @Test
    void everyRowSaysAllThatItShows() {
        String says = list().getCellRenderer()
                .getListCellRendererComponent(list(), rows().get(0), 0, false, false)
                .getAccessibleContext()
                .getAccessibleName();

        Stream.of("fits", "taken", "keeps every wish", "Level", "years")
                .forEach(word -> assertThat(says).contains(word));
    }
}
