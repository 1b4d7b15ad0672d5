package lungfish.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The room files lately opened or saved. */
public final class Recent {
    /** More would not be read in a menu. */
    public static final int MOST = 10;

    private Recent() {}

    /** The files, the latest first. Those that are gone by now are listed too: they may be on a disk that is away. */
    public static List<Path> files(Preferences preferences) {
        return preferences.get(Preference.RECENT);
    }

    /** Puts a file first. */
    static void add(Path file, Preferences preferences) {
        Path added = file.toAbsolutePath().normalize();
        preferences.set(
                Preference.RECENT,
                Stream.concat(Stream.of(added), files(preferences).stream())
                        .distinct()
                        .limit(MOST)
                        .toList());
    }

    /** Empties the list. */
    public static void forget(Preferences preferences) {
        preferences.set(Preference.RECENT, List.of());
    }
}
