package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JTextField;
import lungfish.desk.Hands;
import lungfish.desk.Later;
import lungfish.edit.OwnValue;
import lungfish.edit.SpreadValues;
import lungfish.room.Spread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet that says how sure a plan is, and its fields. */
final class SureSheetTest {
    @TempDir
    private Path folder;

    private Bench asked() {
        Bench bench = new Bench(folder, "starting-out");
        bench.ask(Question.SURE);
        return bench;
    }

    private static String headline(Bench bench) {
        return bench.part(Paragraph.class, "sure").getText();
    }

    private static JTextField field(Bench bench, String name) {
        return Parts.find(bench.pane().side(), JTextField.class, name).orElseThrow();
    }

    private static void type(JTextField field, String text) {
        field.setText(text);
        field.postActionEvent();
    }

    @Test
    void itSaysHowManyRoomsLikeThisAreServed() {
        assertThat(headline(asked())).matches("(More than )?\\d+ in 100 rooms like this are well served");
    }

    /** With nothing off it needs 1.28 psi, at the lower end of the band. */
    @Test
    void itSaysThatMostRoomsNeedMorePressureThanThePlan() {
        Bench bench = new Bench(folder, "basement-rainbows");
        bench.ask(Question.SURE);

        assertThat(bench.part(Paragraph.class, "shift").getText())
                .startsWith("The plan takes each device as its class. Of 70 outlets one is nearly always worse")
                .endsWith("rather than 1.28 psi.");
    }

    @Test
    void itSaysWhatToMeasureFirst() {
        assertThat(asked().part(Paragraph.class, "measure-first").getText()).startsWith("This first: ");
    }

    @Test
    void aWidthThatIsTypedIsOneEditAndCanBeUndone() {
        Bench bench = asked();

        type(field(bench, "Depths, give or take"), "5 cm");

        assertThat(bench.desk().room().spreads().of(Spread.DEPTH)).hasValue(0.05);
        bench.act(UndoEdit.class);
        assertThat(bench.desk().room().spreads().of(Spread.DEPTH)).isEqualTo(OptionalDouble.empty());
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void aWidthThatCannotBeIsToldAndStaysToBeMended() {
        Bench bench = asked();
        JTextField field = field(bench, "Bores, give or take");

        type(field, "90 %");

        assertThat(field.getText()).isEqualTo("90 %");
        assertThat(field.getAccessibleContext().getAccessibleDescription()).contains("from 0 % to 20 %");
        assertThat(bench.desk().isChanged()).isFalse();
    }

    @Test
    void whereEverythingIsKnownNothingIsLeftToMeasure() {
        Bench bench = new Bench(folder, "starting-out");
        for (Spread spread : Spread.values()) {
            OwnValue width = SpreadValues.of(spread);
            width.say(bench.desk().room(), OptionalDouble.of(0)).edit().ifPresent(bench.desk()::apply);
        }

        bench.ask(Question.SURE);

        assertThat(Parts.all(bench.pane().side())
                        .filter(Paragraph.class::isInstance)
                        .map(each -> ((Paragraph) each).getText()))
                .contains("Nothing that may be off moves the reserve, so there is nothing to measure.");
        assertThat(headline(bench)).startsWith("More than 99 in 100");
    }

    @Test
    void aRoomThatCannotBeSolvedSaysSoAndKeepsItsFields() {
        Bench bench = new Bench(folder, "starting-out");
        bench.act(NewRoom.class);

        bench.ask(Question.SURE);

        assertThat(headline(bench)).isEqualTo("Not known yet");
        assertThat(field(bench, "Wear of the blower, give or take").isEnabled()).isTrue();
    }

    @Test
    void whatIsUnderwayCanBeStoppedAndAskedAgain() {
        Deque<Runnable> background = new ArrayDeque<>();
        Hands caller = Hands.ofTheCaller();
        Hands hands = new Hands(caller.front(), caller.planning(), caller.disk(), caller.keeping(), background::add);
        Later<String, String> later = new Later<>(hands, (question, progress) -> "answer", () -> {});
        Footing row = new Footing(asked().pane().view(), later);
        later.ask("question");
        row.tell("answered");
        assertThat(seenCards(row)).isEqualTo(1);

        JButton stop = Parts.find(row, JButton.class, "stop").orElseThrow();
        stop.doClick(0);
        background.removeFirst().run();
        row.tell("answered");

        assertThat(later.answer()).isEmpty();
        assertThat(seenCards(row)).isEqualTo(1);
        assertThat(stop.getText()).isEqualTo("Work it out");
        stop.doClick(0);
        row.tell("answered");
        assertThat(seenCards(row)).isEqualTo(1);
        background.removeFirst().run();
        assertThat(later.answer()).contains("answer");
    }

    private static long seenCards(Footing row) {
        return java.util.Arrays.stream(row.getComponents())
                .filter(java.awt.Component::isVisible)
                .count();
    }
}
