package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JTextArea;
import lungfish.desk.Desks;
import lungfish.desk.Hands;
import lungfish.edit.Edit;
import lungfish.room.Blower;
import lungfish.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the sheet that compares pipes and proposes the cheapest build. */
final class PipesSheetTest {
    @TempDir
    private Path folder;

    private Bench open(String room) {
        Bench bench = new Bench(folder, room);
        bench.pane().addNotify(); // a sheet in a window hears of changes
        bench.ask(Question.PIPES);
        return bench;
    }

    private static String text(Bench bench, String name) {
        return bench.part(JTextArea.class, name).getText();
    }

    private static PipesTable table(Bench bench) {
        return bench.part(PipesTable.class, "pipes");
    }

    private static Room room(Bench bench) {
        return bench.desk().room();
    }

    @Test
    void theHeadlineSaysThatThePipeDoesNotMatter() {
        assertThat(text(open("garage-killifish"), "pipes-headline"))
                .startsWith("The pipe does not matter: ")
                .endsWith("even in 16 mm.");
    }

    @Test
    void aRowForEachSizeAndAColumnForEachLayoutWithTheRoomAsDrawnChosen() {
        PipesTable table = table(open("garage-killifish"));

        assertThat(table.getRowCount()).isEqualTo(7);
        assertThat(table.getColumnCount()).isEqualTo(1 + 4);
        assertThat(table.chosen()).map(each -> each.variant().asDrawn()).contains(true);
    }

    @Test
    void oneClickPutsAPipeIntoTheRoomAndOneUndoTakesItOut() {
        Bench bench = open("garage-killifish");
        Room before = room(bench);

        table(bench).choose(0, 2); // the smallest size, opened
        bench.part(JButton.class, "take-pipe").doClick(0);

        assertThat(room(bench).runs().get(0).size()).isEqualTo("pvc-u-16-pn16");
        assertThat(room(bench).runs().get(0).closed()).isFalse();
        bench.desk().undo();
        assertThat(room(bench)).isEqualTo(before);
    }

    @Test
    void whatWasPutInIsTheRoomAsDrawnNext() {
        Bench bench = open("garage-killifish");

        table(bench).choose(3, 1);
        bench.part(JButton.class, "take-pipe").doClick(0);

        assertThat(text(bench, "pipes-chosen")).startsWith("32 mm, loop, fed once, as drawn");
        assertThat(bench.part(JButton.class, "take-pipe").isEnabled()).isFalse();
    }

    @Test
    void buildingItPutsPipeAndBlowerIntoTheRoomAsOneStep() {
        Bench bench = open("garage-killifish");
        Room before = room(bench);

        bench.part(JButton.class, "build-it").doClick(0);

        assertThat(room(bench).runs().get(0).size()).isEqualTo("pvc-u-16-pn16");
        assertThat(room(bench).blowers(Blower.Role.PLANNED).get(0).machine()).contains("linear-diaphragm-40");
        assertThat(text(bench, "cheapest-build")).endsWith("It is the room as drawn.");
        bench.desk().undo();
        assertThat(room(bench)).isEqualTo(before);
    }

    @Test
    void eachWishHasItsPrice() {
        Bench bench = open("garage-killifish");

        List<String> said = Parts.all(bench.part(WishPrices.class, "wish-prices"))
                .filter(JTextArea.class::isInstance)
                .map(part -> ((JTextArea) part).getText())
                .toList();
        assertThat(said).contains("a reserve of 30 %", "costs 25.0 EUR", "no louder than 35 dB(A)", "costs nothing");
    }

    @Test
    void whereNothingMeetsEveryWishTheSheetSaysWhichStandsInTheWay() {
        Bench bench = new Bench(folder, "garage-killifish");
        bench.desk()
                .apply(new Edit(
                        "Wish for silence",
                        room -> room.withWishes(room.wishes().withLoudestDba(OptionalDouble.of(5)))));
        bench.ask(Question.PIPES);

        assertThat(text(bench, "cheapest-headline"))
                .isEqualTo("No build meets every wish: the noise stands in the way.");
        assertThat(text(bench, "cheapest-build")).startsWith("The nearest: ");
    }

    @Test
    void aRoomWithoutAMainSaysWhatToDraw() {
        Bench bench = open("starting-out");
        bench.desk().apply(new Edit("Take the pipe away", room -> room.withRuns(List.of())
                .withBlowers(List.of())));

        assertThat(text(bench, "pipes-headline")).contains("draw a main");
        assertThat(table(bench).isVisible()).isFalse();
    }

    /** Hands that do nothing ahead: the question stays under way. */
    @Test
    void whileItIsWorkedOutThereIsAWayToStopAndToGoOn() {
        Hands now = Hands.ofTheCaller();
        Hands idle = new Hands(now.front(), now.planning(), now.disk(), now.keeping(), work -> {});
        Bench bench = new Bench(Desks.in(folder, idle), "garage-killifish");
        bench.ask(Question.PIPES);
        JButton stop = bench.part(JButton.class, "stop");

        assertThat(stop.getText()).isEqualTo("Stop");
        stop.doClick(0);
        assertThat(stop.getText()).isEqualTo("Work it out");
        assertThat(bench.part(JButton.class, "build-it").isEnabled()).isFalse();
    }
}
