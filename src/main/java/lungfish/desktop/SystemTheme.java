package lungfish.desktop;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.util.Locale;

/** Whether the desktop around the window is dark, where it says so in a way that Java hears. */
final class SystemTheme {
    private SystemTheme() {}

    /** The name of the theme that an X11 desktop announces to its programs (XSETTINGS, "Net/ThemeName"). */
    private static final String THEME_NAME = "gnome.Net/ThemeName";

    static boolean isDark() {
        return !GraphicsEnvironment.isHeadless()
                && isDark(Toolkit.getDefaultToolkit().getDesktopProperty(THEME_NAME));
    }

    /** By long custom dark themes say so in their names. */
    static boolean isDark(Object themeName) {
        return String.valueOf(themeName).toLowerCase(Locale.ROOT).contains("dark");
    }
}
