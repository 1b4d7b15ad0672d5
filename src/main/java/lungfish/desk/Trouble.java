package lungfish.desk;

import java.util.List;
import java.util.stream.Collectors;
import lungfish.json.Problem;

/**
 * Something that the person should be told.
 *
 * @param headline what could not be done: "my.room.json could not be opened"
 * @param problems all of them, each with its place; never empty
 */
public record Trouble(String headline, List<Problem> problems) {
    public Trouble {
        problems = List.copyOf(problems);
    }

    public static Trouble of(String headline, Problem problem) {
        return new Trouble(headline, List.of(problem));
    }

    /** Everything as a text of lines, fit to be copied. */
    public String text() {
        return problems.stream().map(Problem::sentence).collect(Collectors.joining("\n", headline + "\n", "\n"));
    }
}
