package lungfish.terminal;

import java.util.Optional;
import lungfish.quantity.DisplayUnits;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** One command: works out its outcome, which is then said in the shape that was asked for. */
@CommandLine.Command(mixinStandardHelpOptions = true, versionProvider = Root.Version.class)
abstract class Command {
    @Option(names = "--json", description = "Answer as JSON, in SI units, for programs.")
    private boolean json;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Show these units; left out: those of the room, else metric.")
    private Optional<DisplayUnits> units = Optional.empty();

    boolean isJson() {
        return json;
    }

    /** The units that were asked for, or those of the room. */
    DisplayUnits unitsOr(DisplayUnits own) {
        return units.orElse(own);
    }

    abstract Outcome call();
}
