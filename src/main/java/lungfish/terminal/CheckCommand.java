package lungfish.terminal;

import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.FindingsReport;
import picocli.CommandLine;

/** Checks a room: every problem of its file, or else what its plan finds. */
@CommandLine.Command(
        name = "check",
        description = "Check a room: every problem of its file; if it has none, what the plan finds.")
final class CheckCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        FindingsReport report = new FindingsReport(plan, quantities);
        return told(plan, isJson() ? report.json() : report.text());
    }
}
