package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import lungfish.desk.Preferences;
import org.junit.jupiter.api.Test;

/** Facts about who hears the keys of toggle buttons that are dressed again and again. */
final class ToggleKeysTest {
    private static final int CHANGES = 10;

    private final List<JToggleButton> buttons;
    private final JPanel row = new JPanel();

    ToggleKeysTest() {
        new Themes(new Preferences(Path.of("nowhere", "preferences"), work -> {})).wear();
        buttons = List.of(new JToggleButton(), new JToggleButton(), new JToggleButton());
        buttons.forEach(row::add);
    }

    /** One listener walks one button on; eleven would walk eleven. */
    @Test
    void afterAnyNumberOfThemesEachHasTheOneThatItBeganWith() {
        List<Integer> before = listeners();
        for (int i = 0; i < CHANGES; i++) {
            ToggleKeys.takeOff(row);
            SwingUtilities.updateComponentTreeUI(row);
        }
        assertThat(before).containsOnly(1);
        assertThat(listeners()).isEqualTo(before);
    }

    private List<Integer> listeners() {
        return buttons.stream().map(button -> button.getKeyListeners().length).toList();
    }
}
