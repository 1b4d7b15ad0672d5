package lungfish.terminal;

import java.util.List;
import java.util.function.Function;
import lungfish.json.JsonWriter;
import lungfish.json.Problem;
import lungfish.json.Reading;

/** What came of a command: an answer with its exit code, or the problems that stood in its way. */
sealed interface Outcome {
    int exit();

    /**
     * An answer.
     *
     * @param text as asked for, ending with a line feed
     */
    record Answer(int exit, String text) implements Outcome {}

    /** Problems with the input. */
    record Refused(int exit, List<Problem> problems) implements Outcome {
        public Refused {
            problems = List.copyOf(problems);
        }

        /** For programs: {@code {"problems": [{"path", "found", "expected"}]}}. */
        String json() {
            return JsonWriter.text(fields -> writeProblems(fields, problems));
        }

        /** For people: a line each. */
        String text() {
            StringBuilder text = new StringBuilder();
            problems.forEach(problem -> text.append(line(problem)).append('\n'));
            return text.toString();
        }

        private static String line(Problem problem) {
            boolean hasPlace = !problem.path().isEmpty();
            return hasPlace ? problem.sentence() : problem.found() + ". Expected " + problem.expected() + ".";
        }
    }

    static Outcome fine(String text) {
        return new Answer(Exit.FINE, text);
    }

    static Outcome refused(List<Problem> problems) {
        return new Refused(Exit.WRONG_INPUT, problems);
    }

    /** What {@code use} makes of what was read, or the problems with it. */
    static <T> Outcome of(Reading<T> reading, Function<T, Outcome> use) {
        return reading.match(use, Outcome::refused);
    }

    static void writeProblems(JsonWriter fields, List<Problem> problems) {
        fields.objects("problems", problems, (one, problem) -> one.text("path", problem.path())
                .text("found", problem.found())
                .text("expected", problem.expected()));
    }
}
