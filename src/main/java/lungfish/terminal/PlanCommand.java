package lungfish.terminal;

import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.PlanJson;
import lungfish.report.PlanText;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Plans a room. */
@CommandLine.Command(
        name = "plan",
        description = "Plan a room: duty, headroom, noise, backup, cost, every outlet, and what to mend.")
final class PlanCommand extends RoomCommand {
    @Option(names = "--why", description = "Say of every headline figure how it comes about.")
    private boolean why;

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        return told(plan, isJson() ? PlanJson.text(plan, quantities) : text(plan, quantities));
    }

    private String text(Plan plan, Quantities quantities) {
        PlanText text = new PlanText(plan, quantities);
        return why ? text.withWhys() : text.text();
    }
}
