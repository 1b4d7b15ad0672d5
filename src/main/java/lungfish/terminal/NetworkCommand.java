package lungfish.terminal;

import java.util.List;
import lungfish.json.Problem;
import lungfish.networkfile.NetworkWriter;
import lungfish.plan.Plan;
import lungfish.quantity.Quantities;
import lungfish.report.NetworkText;
import picocli.CommandLine;

/** Writes the network that a room is solved as: the file that {@code solve} reads, or a table of it. */
@CommandLine.Command(
        name = "network",
        description = "Write the network that the room is solved as: the file that 'solve' and other programs read.")
final class NetworkCommand extends RoomCommand {
    @CommandLine.Option(names = "--table", description = "Show it as a table for people instead.")
    private boolean table;

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        return plan.network()
                .map(network ->
                        told(plan, isTable() ? NetworkText.text(network, quantities) : NetworkWriter.text(network)))
                .orElseGet(NetworkCommand::none);
    }

    private boolean isTable() {
        return table && !isJson();
    }

    private static Outcome none() {
        String expected = "a room with outlets, a main and a blower that joins it; 'check' says what is missing";
        return new Outcome.Refused(Exit.BLOCKED, List.of(new Problem("", "the room makes no network", expected)));
    }
}
