package lungfish;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.Property;

/** Writes docs/laws.md: every property that the build asks of random rooms, networks and figures, read off the tests. */
final class LawsPage {
    private static final String PACKAGES = "lungfish.";

    private static final String HEAD =
            """
            # Laws

            Written by the build (`LawsPageTest` writes `target/laws.md` and compares it with this page). Each line is a property: it is asked of
            so many random cases in every build, and a case that breaks it is made smaller before it is shown. What a line says is the name of
            its test.

            """;

    private final Map<String, List<JavaMethod>> byEngine;

    private LawsPage(List<JavaMethod> laws) {
        byEngine = laws.stream()
                .collect(Collectors.groupingBy(LawsPage::engine, TreeMap::new, Collectors.toUnmodifiableList()));
    }

    /** Of the tests that were compiled with this one. */
    static LawsPage ofTheBuild() {
        return new LawsPage(new ClassFileImporter()
                .importLocations(List.of(Location.of(Path.of("target", "test-classes")))).stream()
                        .map(JavaClass::getMethods)
                        .flatMap(java.util.Set::stream)
                        .filter(method -> method.isAnnotatedWith(Property.class))
                        .sorted(Comparator.comparing(LawsPage::test).thenComparing(LawsPage::sentence))
                        .toList());
    }

    /** How many there are. */
    int size() {
        return byEngine.values().stream().mapToInt(List::size).sum();
    }

    /** Whether one of this class and name is among them. */
    boolean has(String test, String name) {
        return byEngine.values().stream()
                .flatMap(List::stream)
                .anyMatch(law -> test(law).equals(test) && law.getName().equals(name));
    }

    /** The whole page. */
    String text(List<String> named) {
        StringBuilder page = new StringBuilder(HEAD);
        page.append(size()).append(" laws.\n\n## The usual ones\n\n");
        named.forEach(line -> page.append(line).append('\n'));
        byEngine.forEach((engine, laws) -> {
            page.append("\n## ").append(engine).append("\n\n| law | cases | test |\n| --- | ---: | --- |\n");
            laws.forEach(law -> page.append("| ")
                    .append(sentence(law))
                    .append(" | ")
                    .append(cases(law))
                    .append(" | `")
                    .append(test(law))
                    .append("` |\n"));
        });
        return page.toString();
    }

    private static String engine(JavaMethod law) {
        String name = law.getOwner().getPackageName();
        return name.startsWith(PACKAGES) ? name.substring(PACKAGES.length()) : name;
    }

    private static String test(JavaMethod law) {
        return law.getOwner().getSimpleName();
    }

    /** "massIsBalanced": mass is balanced. */
    static String sentence(JavaMethod law) {
        String words = law.getName().replaceAll("([A-Z])", " $1").strip().toLowerCase(Locale.ROOT);
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String cases(JavaMethod law) {
        int tries = law.getAnnotationOfType(Property.class).tries();
        return tries == 0 ? "300" : Integer.toString(tries);
    }
}
