package lungfish.terminal;

import picocli.CommandLine;
import picocli.CommandLine.Parameters;

/** Prints a schema as it stands in the jar. */
@CommandLine.Command(name = "schema", description = "Print the JSON Schema of a file or of an answer.")
final class SchemaCommand extends Command {
    /** The kinds of file that have one. */
    enum Kind {
        ROOM("room.schema.json"),
        NETWORK("network.schema.json"),
        PLAN("plan.schema.json"),
        STAGES("stages.schema.json"),
        BLOWERS("blowers.schema.json"),
        EVERYDAY("everyday.schema.json"),
        SURE("sure.schema.json"),
        PIPES("pipes.schema.json"),
        OUTAGE("outage.schema.json"),
        FIT("fit.schema.json");

        private final String file;

        Kind(String file) {
            this.file = file;
        }
    }

    @Parameters(
            paramLabel = "room|network|plan|stages|blowers|everyday|sure|pipes|outage|fit",
            description = "Which one.")
    private Kind kind = Kind.ROOM;

    @Override
    Outcome call() {
        return Outcome.fine(Input.text("schemas/" + kind.file));
    }
}
