package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import lungfish.NeedsDisplay;
import lungfish.room.Log;
import lungfish.room.Reading;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Journeys through what is done with hands: build it, start it, write down what was read. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class DoingJourneysTest extends Journey {
    /** Asked on the event thread. */
    private Log log() {
        return pane().view().desk().room().log();
    }

    private String says(String paragraph) {
        return Parts.find(pane(), Paragraph.class, paragraph)
                .map(Paragraph::getText)
                .orElse("");
    }

    private JCheckBox firstStep() {
        return person.see(() -> Parts.all(pane().side())
                .filter(part -> Optional.ofNullable(part.getName()).orElse("").startsWith("tick: "))
                .map(JCheckBox.class::cast)
                .findFirst()
                .orElseThrow());
    }

    @Test
    void whatIsBoughtIsAskedByItsKeyAndLeftByEscape() {
        person.ask(Question.BUILD);
        person.until("the parts", () -> says("build-headline").endsWith("of parts"));
        person.press("ESCAPE");
        person.until("the room", () -> pane().center().canvas().isFocusOwner());
    }

    @Test
    void aStepOfTheFirstStartIsTickedWithTheMouseAndThatIsUndone() {
        person.click(person.part(JToggleButton.class, "side-First start"));
        person.until("the steps", () -> says("start-headline").startsWith("0 of "));
        JCheckBox step = firstStep();
        person.click(step);
        person.until("the tick in the log", () -> log().ticks().size() == 1);
        person.until("the tick counted", () -> says("start-headline").startsWith("1 of "));
        assertThat(person.see(() -> step.isSelected() && step.isFocusOwner())).isTrue();
        person.act(UndoEdit.class);
        person.until("no tick", () -> log().ticks().isEmpty() && !step.isSelected());
    }

    @Test
    void aReadingIsWrittenDownAndThatIsUndone() {
        person.ask(Question.LOG);
        person.until("what to begin with", () -> says("log-says").startsWith("Write down first"));
        person.until("the plan of the room", () -> pane().view().desk().isCurrent());
        JTextField seconds = person.part(JTextField.class, "log: Seconds");
        person.click(seconds);
        person.until("the field", seconds::isFocusOwner);
        person.write("22.5");
        person.until("what was typed", () -> seconds.getText().equals("22.5"));
        person.click(person.part(JButton.class, "Write it down"));
        person.until("the reading", () -> log().readings().size() == 1);
        assertThat(person.see(() -> log().readings().get(0).measured()))
                .isInstanceOfSatisfying(
                        Reading.Jar.class, jar -> assertThat(jar.s()).isEqualTo(22.5));
        person.act(UndoEdit.class);
        person.until(
                "an empty log again", () -> log().isEmpty() && says("log-says").startsWith("Write down first"));
    }

    /** What is chosen in a list changes the fields beside it; the list keeps the focus, so that keys go on. */
    @Test
    void aGaugeIsWrittenDownByKeysAlone() {
        person.ask(Question.LOG);
        person.until("the plan of the room", () -> pane().view().desk().isCurrent());
        Choice<?> kind = person.part(Choice.class, "What was read");
        person.see(kind::requestFocusInWindow);
        person.until("the list", kind::isFocusOwner);
        person.press("G");
        JTextField pressure = person.part(JTextField.class, "log: Pressure");
        assertThat(person.see(kind::isFocusOwner)).isTrue();
        tabTo(pressure);
        person.write("6.2");
        person.until("what was typed", () -> pressure.getText().equals("6.2"));
        JButton write = person.part(JButton.class, "Write it down");
        tabTo(write);
        person.press("SPACE");
        person.until("the reading", () -> log().readings().size() == 1);
    }

    /** As a person does: looks where the focus has come to before the next key. */
    private void tabTo(Component goal) {
        for (int keys = 0; keys < 4 && !person.see(goal::isFocusOwner); keys++) {
            Component before = person.see(DoingJourneysTest::focus);
            person.press("TAB");
            person.until("the focus to go on", () -> focus() != before && focus() != null);
        }
        assertThat(person.see(goal::isFocusOwner)).isTrue();
    }

    private static @Nullable Component focus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }
}
