package lungfish.desktop;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether the desktop around the window is dark. Java does not know; each system has a small program of its own that does.
 * A program that is missing, fails or is silent says nothing, and the next is asked; where none speaks, it is light.
 */
final class SystemTheme {
    /** A person waits for the first window meanwhile. */
    private static final long PATIENCE_MS = 400;

    /** The name of the theme that an X11 desktop announces to its programs (XSETTINGS, "Net/ThemeName"). */
    private static final String THEME_NAME = "gnome.Net/ThemeName";

    /**
     * Something to ask.
     *
     * @param command the program and its words
     * @param reads what it says; empty: it does not tell
     */
    record Question(List<String> command, Function<String, Optional<Boolean>> reads) {}

    private SystemTheme() {}

    /** Asks the system; takes a moment, so never on the event thread. */
    static boolean isDark() {
        return Stream.concat(
                        questions(System.getProperty("os.name", "")).stream()
                                .flatMap(question -> said(question.command()).flatMap(question.reads()).stream()),
                        Stream.of(isThemeDark()))
                .findFirst()
                .orElse(false);
    }

    /** What to ask on a system, named as Java names it. */
    static List<Question> questions(String system) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return List.of(
                    new Question(List.of("defaults", "read", "-g", "AppleInterfaceStyle"), SystemTheme::readsMac));
        }
        if (name.startsWith("windows")) {
            String key = "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize";
            return List.of(
                    new Question(List.of("reg", "query", key, "/v", "AppsUseLightTheme"), SystemTheme::readsWindows));
        }
        return List.of(
                new Question(
                        List.of(
                                "gdbus",
                                "call",
                                "--session",
                                "--dest=org.freedesktop.portal.Desktop",
                                "--object-path=/org/freedesktop/portal/desktop",
                                "--method=org.freedesktop.portal.Settings.Read",
                                "org.freedesktop.appearance",
                                "color-scheme"),
                        SystemTheme::readsPortal),
                new Question(
                        List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"),
                        SystemTheme::readsSettings));
    }

    /** {@code Dark}; where it is light there is no such key, and nothing is said. */
    static Optional<Boolean> readsMac(String said) {
        return Optional.of(said.strip().equals("Dark"));
    }

    /** {@code AppsUseLightTheme    REG_DWORD    0x0}: 0 is dark. */
    static Optional<Boolean> readsWindows(String said) {
        return said.contains("REG_DWORD") ? Optional.of(said.strip().endsWith("0x0")) : Optional.empty();
    }

    /**
     * {@code (<<uint32 1>>,)}: 1 wishes for dark, 2 for light, 0 for neither. XDG Desktop Portal, Settings,
     * {@code org.freedesktop.appearance}.
     */
    static Optional<Boolean> readsPortal(String said) {
        if (said.contains("uint32 1>")) {
            return Optional.of(true);
        }
        return said.contains("uint32 2>") ? Optional.of(false) : Optional.empty();
    }

    /** {@code 'prefer-dark'}, {@code 'prefer-light'}, or {@code 'default'}, which wishes for neither. */
    static Optional<Boolean> readsSettings(String said) {
        if (said.contains("prefer-dark")) {
            return Optional.of(true);
        }
        return said.contains("prefer-light") ? Optional.of(false) : Optional.empty();
    }

    /** What a program writes; empty where there is none or it says nothing in time. */
    static Optional<String> said(List<String> command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectInput(Redirect.PIPE)
                    .redirectError(Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            if (!process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                return Optional.empty();
            }
            byte[] said = process.getInputStream().readAllBytes();
            return Optional.of(new String(said, StandardCharsets.UTF_8)).filter(text -> !text.isBlank());
        } catch (IOException e) {
            return Optional.empty(); // there is no such program here
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private static boolean isThemeDark() {
        return !GraphicsEnvironment.isHeadless()
                && isThemeDark(Toolkit.getDefaultToolkit().getDesktopProperty(THEME_NAME));
    }

    /** By long custom dark themes say so in their names. */
    static boolean isThemeDark(Object name) {
        return String.valueOf(name).toLowerCase(Locale.ROOT).contains("dark");
    }
}
