package lungfish.terminal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lungfish.closing.Closing;
import lungfish.closing.Named;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.ClosingReport;
import lungfish.report.PlanJson;
import lungfish.report.PlanText;
import lungfish.room.OutletId;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Plans a room; or tells what closing some of its outlets does to the others. */
@CommandLine.Command(
        name = "plan",
        description = "Plan a room: duty, headroom, noise, backup, cost, every outlet, and what to mend.")
final class PlanCommand extends RoomCommand {
    @Option(names = "--why", description = "Say of every headline figure how it comes about.")
    private boolean why;

    @Option(
            names = "--shut",
            split = ",",
            paramLabel = "ID",
            description =
                    "Say instead what the others do when these are shut and no other valve is touched: ids of outlets,"
                            + " tanks, shelves or racks, or 'sometimes' for all that run only sometimes.")
    private List<String> shut = new ArrayList<>();

    @Option(names = "--tuned-first", description = "With --shut: every valve at its coarse start, not as filed.")
    private boolean tunedFirst;

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        if (!shut.isEmpty()) {
            return closing(plan, quantities);
        }
        return told(plan, isJson() ? PlanJson.text(plan, quantities) : text(plan, quantities));
    }

    private String text(Plan plan, Quantities quantities) {
        PlanText text = new PlanText(plan, quantities);
        return why ? text.withWhys() : text.text();
    }

    private Outcome closing(Plan plan, Quantities quantities) {
        Set<OutletId> meant = new HashSet<>();
        List<Problem> problems = new ArrayList<>();
        for (String word : shut) {
            Named.outlets(plan.room(), word).ifPresentOrElse(meant::addAll, () -> problems.add(unknown(word)));
        }
        if (!problems.isEmpty()) {
            return Outcome.refused(problems);
        }
        Optional<Closing> closing =
                plan.trials().flatMap(trials -> Closing.of(plan, tunedFirst ? trials.shouldBe() : trials.is(), meant));
        return closing.map(answer -> new ClosingReport(plan, answer, quantities))
                .map(report -> told(plan, isJson() ? report.json() : report.text()))
                .orElseGet(() -> unsolved(plan));
    }

    private static Problem unknown(String word) {
        return new Problem(
                "",
                "--shut names '" + word + "', but no outlet in place is called so or hangs there",
                "the id of an outlet, tank, shelf or rack in place, or '" + Named.SOMETIMES
                        + "'; 'plan' lists the outlets");
    }

    private static Outcome unsolved(Plan plan) {
        Problem problem = new Problem(
                "",
                "the room " + plan.room().name() + " cannot be solved, so nobody can say what closing does",
                "a room that 'check' finds nothing blocking in");
        return new Outcome.Refused(Exit.BLOCKED, List.of(problem));
    }
}
