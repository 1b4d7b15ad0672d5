package lungfish.terminal;

import java.util.Optional;
import lungfish.catalogue.CatalogueFiles;
import lungfish.choice.BlowerBench;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.Quantities;
import lungfish.report.BlowersReport;
import picocli.CommandLine;

/** Compares the blowers for a room. */
@CommandLine.Command(
        name = "blowers",
        description =
                "Rank the blowers for a room by its order of wishes: which fit, what each costs, and why it stands"
                        + " where it stands.")
final class BlowersCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        Optional<BlowerBench> bench =
                new Planner(CatalogueFiles.load()).basis(plan.room()).map(basis -> BlowerBench.of(basis, plan.pumps()));
        BlowersReport report = new BlowersReport(plan, bench, quantities);
        return told(plan, isJson() ? report.json() : report.text());
    }
}
