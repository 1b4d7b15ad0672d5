package lungfish.desk;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;

/**
 * Something that the person prefers, whatever room is open.
 *
 * @param key its name in the file
 * @param byDefault taken where the file says nothing that can be read
 * @param reader empty for a text that makes no sense
 * @param writer what {@code reader} reads as the same value
 */
public record Preference<T>(String key, T byDefault, Function<String, Optional<T>> reader, Function<T, String> writer) {
    /** In which units rooms are shown. */
    public static final Preference<UnitsShown> UNITS = choice("units", UnitsShown.AS_FILED);

    /** Light or dark. */
    public static final Preference<Theme> THEME = choice("theme", Theme.AS_THE_SYSTEM);

    /** Size of all text, in hundredths of the usual. */
    public static final Preference<Integer> TEXT_PERCENT = whole("text_percent", 100, 100, 200);

    /** Room files lately opened or saved, the latest first. */
    public static final Preference<List<Path>> RECENT =
            new Preference<>("recent", List.of(), Preference::readPaths, Preference::writePaths);

    /** Light, dark, or whichever the system is. */
    public enum Theme {
        AS_THE_SYSTEM,
        LIGHT,
        DARK
    }

    /** The units of the room's file, or always the same. */
    public enum UnitsShown {
        AS_FILED,
        METRIC,
        US;

        /** Always these. */
        static UnitsShown always(DisplayUnits those) {
            return switch (those) {
                case METRIC -> METRIC;
                case US -> US;
            };
        }

        /** Those of a room. */
        DisplayUnits of(Room room) {
            return switch (this) {
                case AS_FILED -> room.displayUnits();
                case METRIC -> DisplayUnits.METRIC;
                case US -> DisplayUnits.US;
            };
        }
    }

    /** One of the words of an enum, in the file in lower case. */
    public static <E extends Enum<E>> Preference<E> choice(String key, E byDefault) {
        return new Preference<>(
                key,
                byDefault,
                text -> Arrays.stream(byDefault.getDeclaringClass().getEnumConstants())
                        .filter(each -> word(each).equals(text))
                        .findFirst(),
                Preference::word);
    }

    /** A whole number between two others, both included. */
    public static Preference<Integer> whole(String key, int byDefault, int least, int most) {
        return new Preference<>(key, byDefault, text -> readWhole(text, least, most), String::valueOf);
    }

    private static String word(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT);
    }

    private static Optional<Integer> readWhole(String text, int least, int most) {
        try {
            return Optional.of(Integer.parseInt(text)).filter(number -> number >= least && number <= most);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** One path a line; a line that is no path here is left out. */
    private static Optional<List<Path>> readPaths(String text) {
        return Optional.of(text.lines().flatMap(Preference::readPath).toList());
    }

    private static Stream<Path> readPath(String line) {
        try {
            return Stream.of(Path.of(line)).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Stream.empty();
        }
    }

    private static String writePaths(List<Path> paths) {
        return paths.stream().map(Path::toString).collect(Collectors.joining("\n"));
    }
}
