package lungfish.desktop;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import lungfish.desk.Preference;
import lungfish.desk.Preferences;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;

/** Light or dark, and the size of text: read from the preferences, and given to every widget from the one palette. */
final class Themes {
    private final Preferences preferences;
    private boolean isSystemDark;
    private int screenPercent = Preference.TEXT_PERCENT.byDefault();

    Themes(Preferences preferences) {
        this.preferences = preferences;
    }

    /** What the system has said last. */
    void systemIs(boolean dark) {
        isSystemDark = dark;
    }

    boolean isDark() {
        return switch (preferences.get(Preference.THEME)) {
            case LIGHT -> false;
            case DARK -> true;
            case AS_THE_SYSTEM -> isSystemDark;
        };
    }

    Palette palette() {
        return isDark() ? Palette.DARK : Palette.LIGHT;
    }

    Type type() {
        return new Type(textPercent() / 100.0);
    }

    /** As the person has chosen; before that, as suits the screen. */
    int textPercent() {
        return preferences.chosen(Preference.TEXT_PERCENT).orElse(screenPercent);
    }

    /** What the screen measures, in the pixels that the system hands to programs: it may have made them larger already. */
    void screenIs(int widthPx, int heightPx) {
        screenPercent = percentFor(widthPx, heightPx);
    }

    /** On a screen of many pixels text begins larger, so that the window is read from the same place as on a small one. */
    static int percentFor(int widthPx, int heightPx) {
        if (widthPx >= 3000 && heightPx >= 1700) {
            return 150;
        }
        return widthPx >= 2400 && heightPx >= 1350 ? 125 : 100;
    }

    Preferences preferences() {
        return preferences;
    }

    /** Dresses all widgets, those that are there too. */
    void wear() {
        FlatLaf.registerCustomDefaultsSource("lungfish.desktop");
        FlatLaf.setGlobalExtraDefaults(colours(palette()));
        UIManager.put("defaultFont", new FontUIResource(type().body()));
        if (isDark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        ToggleKeys.takeOff();
        FlatLaf.updateUI();
    }

    private static Map<String, String> colours(Palette palette) {
        Map<String, String> colours = new HashMap<>();
        colours.put("@background", hex(palette.paper()));
        colours.put("@foreground", hex(palette.ink()));
        colours.put("@disabledForeground", hex(palette.free()));
        colours.put("@componentBackground", hex(palette.sheet()));
        colours.put("@buttonBackground", hex(palette.sheet()));
        colours.put("@menuBackground", hex(palette.sheet()));
        colours.put("@accentColor", hex(palette.air()));
        colours.put("@selectionBackground", hex(palette.accentSoft()));
        colours.put("@selectionForeground", hex(palette.ink()));
        colours.put("@selectionInactiveBackground", hex(palette.accentSoft()));
        colours.put("@selectionInactiveForeground", hex(palette.ink()));
        colours.put("@sheetLine", hex(palette.line()));
        colours.put("@softInk", hex(palette.softInk()));
        colours.put("@floor", hex(palette.floor()));
        return colours;
    }

    private static String hex(Color colour) {
        return String.format(Locale.ROOT, "#%06X", colour.getRGB() & 0xFFFFFF);
    }
}
