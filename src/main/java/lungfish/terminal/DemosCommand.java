package lungfish.terminal;

import lungfish.json.JsonWriter;
import lungfish.roomfile.DemoRooms;
import picocli.CommandLine;

/** Lists the demo rooms. */
@CommandLine.Command(name = "demos", description = "List the demo rooms that can be planned by name.")
final class DemosCommand extends Command {
    @Override
    Outcome call() {
        return Outcome.fine(
                isJson()
                        ? JsonWriter.text(fields -> fields.texts("demo_rooms", DemoRooms.NAMES))
                        : String.join("\n", DemoRooms.NAMES) + "\n");
    }
}
