package lungfish.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Everyday;
import lungfish.everyday.Lack;
import lungfish.everyday.Named;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.EverydayJson;
import lungfish.report.EverydayReport;
import lungfish.report.EverydayReport.Told;
import lungfish.room.OutletId;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Tells what everyday disturbances do to every outlet while no valve is touched, and what to do about each. */
@CommandLine.Command(
        name = "everyday",
        description =
                "What everyday disturbances do to every outlet while no valve is touched, and what to do about each.")
final class EverydayCommand extends RoomCommand {
    @Option(
            names = "--do",
            paramLabel = "WHAT[=IDS]",
            description =
                    "One of them: half-drain, cleaned, due, hatchery-off, hatchery-on, airline-off, shut, mains-low,"
                            + " filter-clogged; of the outlets, tanks, shelves or racks named (commas between them), or 'sometimes' for"
                            + " all outlets that run only sometimes. Without names: of the whole room. May be said several times; left"
                            + " out: all of them.")
    private List<String> wanted = new ArrayList<>();

    @Option(names = "--tuned-first", description = "Every valve at its coarse start, not as filed.")
    private boolean tunedFirst;

    /** What is asked, and of whom. */
    private record Asked(Kind kind, Set<OutletId> meant) {}

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        List<Problem> problems = new ArrayList<>();
        List<Asked> asked = wanted.isEmpty()
                ? Arrays.stream(Kind.values())
                        .map(kind -> new Asked(kind, Set.of()))
                        .toList()
                : wanted.stream()
                        .flatMap(word -> asked(plan, word, problems).stream())
                        .toList();
        if (!problems.isEmpty()) {
            return Outcome.refused(problems);
        }
        return plan.trials().isEmpty() ? unsolved(plan) : told(plan, text(plan, quantities, asked));
    }

    private static Optional<Asked> asked(Plan plan, String word, List<Problem> problems) {
        String[] parts = word.split("=", 2);
        Optional<Kind> kind = Arrays.stream(Kind.values())
                .filter(each -> word(each).equals(parts[0]))
                .findFirst();
        if (kind.isEmpty()) {
            String all = Arrays.stream(Kind.values()).map(EverydayCommand::word).collect(Collectors.joining(", "));
            problems.add(new Problem("", "--do names '" + parts[0] + "'", "one of " + all));
        }
        Set<OutletId> meant = parts.length < 2 ? Set.of() : meant(plan, parts[1], problems);
        return kind.map(each -> new Asked(each, meant));
    }

    private static Set<OutletId> meant(Plan plan, String names, List<Problem> problems) {
        Set<OutletId> meant = new HashSet<>();
        for (String name : names.split(",", -1)) {
            Named.outlets(plan.room(), name).ifPresentOrElse(meant::addAll, () -> problems.add(unknown(name)));
        }
        return meant;
    }

    private static String word(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Problem unknown(String name) {
        return new Problem(
                "",
                "--do names '" + name + "', but no outlet in place is called so or hangs there",
                "the id of an outlet, tank, shelf or rack in place, or '" + Named.SOMETIMES
                        + "'; 'plan' lists the outlets");
    }

    private static Outcome unsolved(Plan plan) {
        Problem problem = new Problem(
                "",
                "the room " + plan.room().name() + " cannot be solved, so nobody can say what disturbs it",
                "a room that 'check' finds nothing blocking in");
        return new Outcome.Refused(Exit.BLOCKED, List.of(problem));
    }

    private String text(Plan plan, Quantities quantities, List<Asked> asked) {
        Catalogue catalogue = CatalogueFiles.load();
        List<Told> all = asked.stream().map(each -> told(plan, each, catalogue)).toList();
        EverydayReport report = new EverydayReport(plan, quantities);
        if (isJson()) {
            return EverydayJson.text(plan, quantities, tunedFirst, all);
        }
        return all.size() > 1 ? report.overview(all) : report.text(all.get(0));
    }

    private Told told(Plan plan, Asked asked, Catalogue catalogue) {
        Optional<Disturbed> answer = plan.trials()
                .flatMap(trials -> Everyday.of(
                        plan, tunedFirst ? trials.shouldBe() : trials.is(), asked.kind(), asked.meant(), catalogue));
        return new Told(asked.kind(), answer, Lack.of(plan, asked.kind(), asked.meant()));
    }
}
