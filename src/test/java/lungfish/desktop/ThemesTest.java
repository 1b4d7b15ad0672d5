package lungfish.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import lungfish.desk.Preference;
import lungfish.desk.Preferences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Facts about the size of text. */
final class ThemesTest {
    @TempDir
    private Path folder;

    private final Preferences preferences = new Preferences(Path.of("nowhere", "preferences"), work -> {});
    private final Themes themes = new Themes(preferences);

    @Test
    void textBeginsLargerOnAScreenOfManyPixels() {
        themes.screenIs(1920, 1080);
        assertThat(themes.textPercent()).isEqualTo(100);
        themes.screenIs(2560, 1440);
        assertThat(themes.textPercent()).isEqualTo(125);
        themes.screenIs(3840, 2160);
        assertThat(themes.textPercent()).isEqualTo(150);
    }

    /** 3440 by 1440 is a wide screen, not a fine one. */
    @Test
    void aWideScreenIsNoFineOne() {
        themes.screenIs(3440, 1440);
        assertThat(themes.textPercent()).isEqualTo(125);
    }

    @Test
    void whatThePersonChoseHoldsOnEveryScreen() {
        preferences.set(Preference.TEXT_PERCENT, 100);
        themes.screenIs(3840, 2160);
        assertThat(themes.textPercent()).isEqualTo(100);
    }

    @Test
    void thePanelsTakeTheirPartOfAWideWindowAndNeverTheRoomsShareOfASmallOne() {
        View view = new Bench(folder, "starting-out").pane().view();
        view.inWindowOf(1280);
        assertThat(view.sidePx()).isEqualTo(360);
        view.inWindowOf(2200);
        assertThat(view.sidePx()).isEqualTo(440);
        view.inWindowOf(3840);
        assertThat(view.sidePx()).isEqualTo(460);
        view.inWindowOf(700);
        assertThat(view.sidePx()).isEqualTo(294);
    }
}
