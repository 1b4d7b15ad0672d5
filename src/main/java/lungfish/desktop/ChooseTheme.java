package lungfish.desktop;

import lungfish.desk.Preference;

/** Light, dark, or as the system is. */
final class ChooseTheme extends Act {
    private final transient WindowPane window;
    private final transient Preference.Theme theme;

    ChooseTheme(WindowPane window, String words, Preference.Theme theme) {
        super(words, words.charAt(0), null);
        this.window = window;
        this.theme = theme;
    }

    @Override
    void act() {
        window.home().wear(theme);
    }
}
