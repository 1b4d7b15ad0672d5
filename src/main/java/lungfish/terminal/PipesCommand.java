package lungfish.terminal;

import java.util.Optional;
import lungfish.catalogue.CatalogueFiles;
import lungfish.choice.PipesAnswer;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.quantity.Quantities;
import lungfish.report.PipesJson;
import lungfish.report.PipesReport;
import picocli.CommandLine;

/** Compares the pipes for a room, and finds its cheapest build. */
@CommandLine.Command(
        name = "pipes",
        description = "Compare the pipes for a room: each size, loop open or closed, fed once or twice; and find the"
                + " cheapest build that meets every wish, and what each wish costs.")
final class PipesCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        Planner planner = new Planner(CatalogueFiles.load());
        Optional<PipesAnswer> found = PipesAnswer.of(plan.room(), planner, Progress.UNHEARD);
        return told(plan, found.map(each -> text(plan, quantities, each)).orElseGet(() -> none(plan, quantities)));
    }

    private String text(Plan plan, Quantities quantities, PipesAnswer found) {
        return isJson()
                ? PipesJson.text(plan, quantities, found.study(), found.cheapest())
                : new PipesReport(quantities).text(found.study(), found.cheapest());
    }

    private String none(Plan plan, Quantities quantities) {
        return isJson() ? PipesJson.none(plan, quantities) : PipesReport.none();
    }
}
