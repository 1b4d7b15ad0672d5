package lungfish.terminal;

import java.util.List;
import lungfish.json.Problem;
import lungfish.networkfile.NetworkWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.NetworkText;
import picocli.CommandLine;

/** Shows the network that a room is solved as. */
@CommandLine.Command(
        name = "network",
        description = "Show the network that the room is solved as; with --json, the file that 'solve' reads.")
final class NetworkCommand extends RoomCommand {
    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        return plan.network()
                .map(network ->
                        told(plan, isJson() ? NetworkWriter.text(network) : NetworkText.text(network, quantities)))
                .orElseGet(NetworkCommand::none);
    }

    private static Outcome none() {
        String expected = "a room with outlets, a main and a blower that joins it; 'check' says what is missing";
        return new Outcome.Refused(Exit.BLOCKED, List.of(new Problem("", "the room makes no network", expected)));
    }
}
