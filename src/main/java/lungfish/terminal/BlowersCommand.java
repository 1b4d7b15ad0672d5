package lungfish.terminal;

import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.BlowersReport;
import picocli.CommandLine;

/** Compares the blowers for a room. */
@CommandLine.Command(
        name = "blowers",
        description = "Compare the blowers for a room: which fit, and which limit the others break, by how much.")
final class BlowersCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        return told(plan, isJson() ? BlowersReport.json(plan) : new BlowersReport(quantities).text(plan));
    }
}
