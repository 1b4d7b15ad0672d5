package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractButton;
import javax.swing.DefaultButtonModel;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import lungfish.NeedsDisplay;
import org.junit.jupiter.api.Test;

/** Facts about the window for someone who has no mouse. */
@NeedsDisplay(NeedsDisplay.For.HANDS)
final class KeyboardJourneysTest extends Journey {
    private static final int MOST_STEPS = 60;

    private Component owner() {
        return person.see(() -> Optional.ofNullable(Person.owner()).orElseThrow());
    }

    private Component step(String key) {
        Component before = owner();
        person.press(key);
        person.until(
                "the focus elsewhere than in " + before.getClass() + " " + before.getName(),
                () -> Person.owner() != before && Person.owner() != null);
        return owner();
    }

    /** Once round the window. */
    private Set<Component> round(String key) {
        Set<Component> reached = new LinkedHashSet<>();
        Component at = owner();
        while (reached.add(at) && reached.size() < MOST_STEPS) {
            at = step(key);
        }
        return reached;
    }

    /** Of a group of choices Tab leads to the one that is taken; arrows lead on from there. */
    private List<Component> controls() {
        return person.see(() -> Parts.all(pane())
                .filter(part -> part instanceof AbstractButton button && isForTab(button))
                .toList());
    }

    private static boolean isForTab(AbstractButton button) {
        boolean isOneOfMany = button.getModel() instanceof DefaultButtonModel model && model.getGroup() != null;
        return button.isShowing()
                && button.isEnabled()
                && button.isFocusable()
                && (!isOneOfMany || button.isSelected());
    }

    private List<String> names(Iterable<Component> parts) {
        List<String> names = new ArrayList<>();
        parts.forEach(part -> names.add(part.getClass().getSimpleName() + " "
                + part.getAccessibleContext().getAccessibleName()));
        return names;
    }

    @Test
    void everyButtonIsReachedByTabAndByShiftTab() {
        Set<Component> forth = round("TAB");
        assertThat(names(forth)).containsAll(names(controls())).contains("RoomCanvas The room from above");
        assertThat(names(round("shift TAB"))).containsExactlyInAnyOrderElementsOf(names(forth));
    }

    @Test
    void everyButtonOfASheetIsReachedToo() {
        person.act(SetConditions.class);
        person.until("the sheet", () -> pane().side().isSheetOpen());
        assertThat(names(round("TAB"))).containsAll(names(controls()));
    }

    @Test
    void theFocusIsSeenOnWhateverHasIt() {
        List<String> unseen = new ArrayList<>();
        Set<Component> round = round("TAB");
        for (int i = 0; i < round.size(); i++) {
            Component here = owner();
            int[] with = picture(here);
            step("TAB");
            if (java.util.Arrays.equals(with, picture(here))) {
                unseen.add(here.getClass().getSimpleName() + " " + here.getName());
            }
        }
        assertThat(unseen).isEmpty();
    }

    /** With the pane that scrolls it, whose edge may show the focus. */
    private int[] picture(Component part) {
        return person.see(() -> {
            Component shown =
                    part.getParent() != null && part.getParent().getParent() instanceof JScrollPane pane ? pane : part;
            BufferedImage image = new BufferedImage(shown.getWidth(), shown.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            ((JComponent) shown).paint(g);
            g.dispose();
            return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        });
    }
}
