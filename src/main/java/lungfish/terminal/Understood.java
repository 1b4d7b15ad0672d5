package lungfish.terminal;

import java.util.List;
import lungfish.json.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * A command line read as the library reads it: options, help, versions, and what is wrong with it.
 *
 * @param commands those that it may ask for
 */
record Understood(List<Command> commands) {
    private static final int WIDTH = 96;

    Outcome outcome(String... args) {
        try {
            ParseResult parsed = line().parseArgs(args);
            return outcome(parsed);
        } catch (ParameterException wrong) {
            String command = wrong.getCommandLine().getCommandSpec().qualifiedName(" ");
            return misused(String.valueOf(wrong.getMessage()), command);
        }
    }

    private CommandLine line() {
        CommandLine line = new CommandLine(new Root());
        commands.forEach(line::addSubcommand);
        return line.setCaseInsensitiveEnumValuesAllowed(true)
                .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF))
                .setUsageHelpWidth(WIDTH);
    }

    private static Outcome outcome(ParseResult parsed) {
        for (CommandLine line : parsed.asCommandLineList()) {
            if (line.isUsageHelpRequested()) {
                return Outcome.fine(line.getUsageMessage());
            }
            if (line.isVersionHelpRequested()) {
                return Outcome.fine(String.join("\n", line.getCommandSpec().version()) + "\n");
            }
        }
        Object last = parsed.asCommandLineList()
                .get(parsed.asCommandLineList().size() - 1)
                .getCommand();
        return last instanceof Command command ? command.call() : misused("no command is given", "lungfish");
    }

    private static Outcome misused(String found, String command) {
        return Outcome.refused(List.of(new Problem("", found, "what '" + command + " --help' shows")));
    }
}
