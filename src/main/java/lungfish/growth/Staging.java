package lungfish.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.BlowerClass;
import lungfish.edit.BlowerEdits;
import lungfish.plan.Basis;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.reason.Finding;
import lungfish.reason.PartId;
import lungfish.reason.Severity;
import lungfish.room.Room;
import lungfish.sizing.Candidate;
import lungfish.sizing.Fleet;
import lungfish.sizing.Limit;

/** Grows a room step by step, and says at each step how the blower of now stands. */
public final class Staging {
    private final Planner planner;
    private final Room drawn;
    private final Progress progress;
    private final List<Solved> solved = new ArrayList<>();
    private int done;
    private int steps;

    /** A stage that could be solved, before it is judged. */
    private record Solved(Stage.When when, Basis basis) {}

    private Staging(Planner planner, Room drawn, Progress progress) {
        this.planner = planner;
        this.drawn = drawn;
        this.progress = progress;
    }

    /**
     * The stages of a room.
     *
     * @return empty where not one of them can be solved
     */
    public static Optional<Stages> of(Planner planner, Room room, Progress progress) {
        return new Staging(planner, room, progress).stages();
    }

    private Optional<Stages> stages() {
        List<Grown> grown = Grown.steps(drawn);
        steps = 2 * grown.size() + 1;
        Optional<Candidate> blower = Optional.empty();
        for (Grown step : grown) {
            Room room = step.room();
            Optional<BlowerClass> kind = blower.map(Candidate::kind);
            Optional<Basis> basis = planner.basis(
                    kind.map(each -> BlowerEdits.settle(each).of(room)).orElse(room));
            if (blower.isEmpty()) {
                blower = basis.map(Basis::chosen);
                basis = blower.flatMap(
                        first -> planner.basis(BlowerEdits.settle(first.kind()).of(room)));
            }
            basis.ifPresent(each -> solved.add(new Solved(step.when(), each)));
            told();
        }
        return blower.map(Candidate::fleet).map(this::judged);
    }

    private void told() {
        progress.at(++done, steps);
    }

    private Stages judged(Fleet fleet) {
        List<Finding> now = findings(solved.get(0));
        List<Stage> stages = new ArrayList<>();
        for (Solved each : solved) {
            stages.add(stage(each, now));
            told();
        }
        boolean recommended = fleet.placed().stream().anyMatch(placed -> !placed.named());
        Optional<Stages.Foresight> foresight =
                Foreseeing.of(solved.stream().map(Solved::basis).toList(), fleet);
        progress.at(steps, steps);
        return new Stages(fleet, recommended, stages, foresight);
    }

    private Stage stage(Solved solved, List<Finding> now) {
        Basis basis = solved.basis();
        Candidate blower = basis.chosen();
        Optional<Limit.Broken> breaks = Breaks.of(basis, blower).stream().findFirst();
        Optional<Repair> repair = breaks.map(broken -> new Mending(planner, basis, blower, this::heard).cheapest());
        List<Finding> fresh = findings(solved).stream()
                .filter(finding -> now.stream()
                        .noneMatch(known ->
                                known.code() == finding.code() && known.where().equals(finding.where())))
                .toList();
        return new Stage(
                solved.when(),
                basis.room(),
                basis.demand().needs().size(),
                basis.needed(),
                new Stage.Standing(blower, breaks, basis.headroom(blower), repair),
                fresh);
    }

    /** Lets a question that is no longer wanted stop between two trials. */
    private void heard() {
        progress.at(done, steps);
    }

    /** How outlets get their air as set changes with every tap until all is set anew; what the blower lacks is a limit. */
    private static boolean isSaidElsewhere(Finding finding) {
        PartId.Kind kind = finding.where().kind();
        return kind == PartId.Kind.OUTLET || kind == PartId.Kind.BLOWER;
    }

    private List<Finding> findings(Solved solved) {
        heard();
        return planner.plan(solved.basis().room()).findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE && !isSaidElsewhere(finding))
                .toList();
    }
}
