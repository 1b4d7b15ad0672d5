package lungfish.terminal;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import lungfish.json.Problem;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Runs one command line. Knows no process: streams come in, the exit code goes out. */
public final class Terminal {
    private static final int WIDTH = 96;

    private final Console console;
    private final List<Command> commands;

    Terminal(Console console, List<Command> commands) {
        this.console = console;
        this.commands = List.copyOf(commands);
    }

    /**
     * Runs the command that {@code args} names.
     *
     * @return the exit code, as {@link Exit} says
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        return new Terminal(new Console(out, err), commands()).run(args);
    }

    /** Whether this word is a command, and so no file. */
    public static boolean isCommand(String word) {
        return commands().stream()
                .map(command -> new CommandLine(command).getCommandName())
                .anyMatch(word::equals);
    }

    private static List<Command> commands() {
        return List.of(
                new OpenCommand(),
                new PlanCommand(),
                new CheckCommand(),
                new BlowersCommand(),
                new PipesCommand(),
                new StagesCommand(),
                new EverydayCommand(),
                new SureCommand(),
                new FitCommand(),
                new OutageCommand(),
                new ReportCommand(),
                new NetworkCommand(),
                new SolveCommand(),
                new SchemaCommand(),
                new DemosCommand(),
                new HelpCommand());
    }

    int run(String... args) {
        Outcome outcome = outcome(args);
        console.say(outcome, Arrays.asList(args).contains("--json"));
        return outcome.exit();
    }

    private Outcome outcome(String[] args) {
        try {
            ParseResult parsed = line().parseArgs(args);
            return outcome(parsed);
        } catch (ParameterException wrong) {
            String command = wrong.getCommandLine().getCommandSpec().qualifiedName(" ");
            return misused(String.valueOf(wrong.getMessage()), command);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError | LinkageError fault) {
            return Faults.outcome(fault, List.of(args));
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
