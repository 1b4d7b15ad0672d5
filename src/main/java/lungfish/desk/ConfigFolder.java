package lungfish.desk;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where this system wants programs to keep what the person prefers. */
public final class ConfigFolder {
    private ConfigFolder() {}

    /** The folder for this program here; it may not be there yet. */
    public static Path here() {
        return of(System.getProperty("os.name", ""), System.getenv(), Path.of(System.getProperty("user.home", ".")));
    }

    /**
     * The folder on a system.
     *
     * @param system its name, as Java says it
     * @param environment {@code XDG_CONFIG_HOME} (XDG Base Directory Specification 0.8: absolute, or to be ignored) or
     *     {@code APPDATA} say otherwise than the usual
     */
    static Path of(String system, Map<String, String> environment, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return said("APPDATA", environment)
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Lungfish");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Lungfish");
        }
        return said("XDG_CONFIG_HOME", environment)
                .orElse(home.resolve(".config"))
                .resolve("lungfish");
    }

    private static Optional<Path> said(String variable, Map<String, String> environment) {
        try {
            return Optional.ofNullable(environment.get(variable)).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
