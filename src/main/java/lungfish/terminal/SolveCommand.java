package lungfish.terminal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lungfish.json.JsonWriter;
import lungfish.json.Problem;
import lungfish.network.Answer;
import lungfish.network.Network;
import lungfish.network.Refused;
import lungfish.network.Solver;
import lungfish.networkfile.AnswerWriter;
import lungfish.networkfile.NetworkReader;
import lungfish.quantity.DisplayUnits;
import lungfish.quantity.Quantities;
import lungfish.report.AnswerText;
import lungfish.report.Page;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Solves a network file. */
@CommandLine.Command(name = "solve", description = "Solve a network file: as its valves are set, tuned, or both.")
final class SolveCommand extends Command {
    @Parameters(paramLabel = "NETWORK", description = "A network file, as 'network ROOM --json' writes it.")
    private String network = "";

    @Option(names = "--mode", paramLabel = "as-set|tuned|both", description = "Which question; left out: both.")
    private Mode mode = Mode.BOTH;

    /** Which question is asked. */
    enum Mode {
        AS_SET,
        TUNED,
        BOTH;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    @Override
    Outcome call() {
        return Outcome.of(Input.network(network), bytes -> Outcome.of(NetworkReader.read(bytes), this::solved));
    }

    private Outcome solved(Network read) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        Solver solver = Solver.of(read);
        if (mode != Mode.TUNED) {
            answers.put("as_set", solver.asSet());
        }
        if (mode != Mode.AS_SET) {
            answers.put("tuned", solver.tuned());
        }
        List<Problem> problems = problems(answers);
        int exit = problems.isEmpty() ? Exit.FINE : Exit.BLOCKED;
        return new Outcome.Answer(exit, isJson() ? json(answers, problems) : text(answers));
    }

    /** A network that asks for nothing cannot be tuned; asked both questions, that is an answer and no problem. */
    private List<Problem> problems(Map<String, Answer> answers) {
        List<Problem> problems = new ArrayList<>();
        answers.forEach((question, answer) -> {
            if (answer instanceof Refused refused && !(mode == Mode.BOTH && refused.why() == Refused.Why.NO_TARGET)) {
                problems.add(new Problem("/" + question, refused.reason(), "a network that can be solved"));
            }
        });
        return problems;
    }

    private static String json(Map<String, Answer> answers, List<Problem> problems) {
        return JsonWriter.text(out -> {
            answers.forEach((question, answer) -> out.object(question, inner -> AnswerWriter.write(inner, answer)));
            if (!problems.isEmpty()) {
                Outcome.writeProblems(out, problems);
            }
        });
    }

    private String text(Map<String, Answer> answers) {
        Page page = new Page();
        AnswerText text = new AnswerText(Quantities.in(unitsOr(DisplayUnits.METRIC)), page);
        answers.values().forEach(text::write);
        return page.text();
    }
}
