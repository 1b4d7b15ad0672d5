package lungfish.terminal;

import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.PlanJson;
import lungfish.report.PlanText;
import picocli.CommandLine;

/** What is left of opening a room where there is no window: its plan. The front door opens the window before it comes here. */
@CommandLine.Command(
        name = "open",
        description =
                "Open a room in the window; without a display, plan it as text. 'open' may be left out before a file.")
final class OpenCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        return told(plan, isJson() ? PlanJson.text(plan, quantities) : new PlanText(plan, quantities).text());
    }
}
