package lungfish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Formulas say where they come from; read off the sources themselves, for no compiler keeps a comment. */
final class SourcesTest {
    private static final Path MAIN = Path.of("src", "main", "java", "lungfish");

    /** Roots, powers and logarithms are never by chance: somebody has published them, or it says who has derived them. */
    private static final Pattern FORMULA =
            Pattern.compile("Math\\.(pow|sqrt|cbrt|log|log10|log1p|exp|expm1|sin|cos|tan|hypot|sinh|cosh|tanh)\\(");

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);

    /** A year of print, a standard, a handbook; or that there is none. */
    private static final Pattern SOURCE =
            Pattern.compile("\\b(1[6-9]\\d\\d|20[0-2]\\d)\\b|\\b(ISO|IEC|ASCE|EN|NEC)\\b|from memory"
                    + "|no source|textbook|handbook|Munson|White|Metcalf|published|our own|by hand|IUPAC|UNESCO|closed form"
                    + "|derivative|decision \\d+");

    @ParameterizedTest
    @ValueSource(strings = {"air", "noise", "backup", "blower", "oxygen", "siphon", "standing", "demand", "outage"})
    void whoeverComputesNamesTheSource(String engine) {
        assertThat(nameless(engine))
                .as("formulas without a source in %s", engine)
                .isEmpty();
    }

    private static List<String> nameless(String engine) {
        try (Stream<Path> files = Files.list(MAIN.resolve(engine))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> isNameless(text(file)))
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isNameless(String text) {
        String comments =
                COMMENT.matcher(text).results().map(found -> found.group()).collect(Collectors.joining(" "));
        return FORMULA.matcher(COMMENT.matcher(text).replaceAll("")).find()
                && !SOURCE.matcher(comments).find();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
