package lungfish.terminal;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.CatalogueFiles;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.plan.Progress;
import lungfish.quantity.Quantities;
import lungfish.report.SureJson;
import lungfish.report.SureReport;
import lungfish.sure.Sampling;
import lungfish.sure.Sureness;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Tells how sure a plan is. */
@CommandLine.Command(
        name = "sure",
        description = "How sure the plan is: bands of its figures, odds of each stage, and what to measure first.")
final class SureCommand extends RoomCommand {
    private static final int FEWEST = 10;

    @Option(names = "--samples", paramLabel = "N", description = "So many rooms like it; left out: 1000.")
    private int samples = Sampling.USUAL_SAMPLES;

    @Option(names = "--seed", paramLabel = "S", description = "Another whole number draws other rooms; left out: 1.")
    private long seed = Sampling.USUAL_SEED;

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        if (samples < FEWEST || samples > Sampling.MOST_SAMPLES) {
            String expected = "a whole number from " + FEWEST + " to " + Sampling.MOST_SAMPLES;
            return Outcome.refused(List.of(new Problem("", "--samples is " + samples, expected)));
        }
        Planner planner = new Planner(CatalogueFiles.load());
        Optional<Sureness> sure = Sampling.of(planner, plan.room(), samples, seed, Progress.UNHEARD);
        return told(plan, sure.map(found -> text(plan, quantities, found)).orElseGet(() -> unsolved(plan, quantities)));
    }

    private String unsolved(Plan plan, Quantities quantities) {
        return isJson() ? SureJson.unsolved(plan, quantities, seed) : SureReport.UNSOLVED;
    }

    private String text(Plan plan, Quantities quantities, Sureness sure) {
        SureReport report = new SureReport(plan.room().name(), quantities);
        return isJson()
                ? SureJson.text(plan, quantities, seed, sure)
                : (plan.keepPumps() ? report.besidePumps() : report).text(sure);
    }
}
