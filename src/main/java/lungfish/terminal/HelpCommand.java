package lungfish.terminal;

import java.util.List;
import java.util.Optional;
import lungfish.json.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how a command is used. */
@CommandLine.Command(name = "help", description = "Say how the program, or one of its commands, is used.")
final class HelpCommand extends Command {
    @Parameters(paramLabel = "COMMAND", arity = "0..1", description = "The command; left out: the whole program.")
    private Optional<String> about = Optional.empty();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    Outcome call() {
        CommandLine program = spec.root().commandLine();
        Optional<CommandLine> meant = about.isEmpty()
                ? Optional.of(program)
                : Optional.ofNullable(program.getSubcommands().get(about.get()));
        return meant.map(line -> Outcome.fine(line.getUsageMessage()))
                .orElseGet(() -> Outcome.refused(List.of(new Problem(
                        "",
                        "'" + about.get() + "' is not a command",
                        "one of " + String.join(", ", program.getSubcommands().keySet())))));
    }
}
