package lungfish.terminal;

import java.util.List;
import java.util.Optional;

/** The commands by name. Each is made when it is asked for: to make all of them takes longer than most plans. */
final class Commands {
    /** In the order in which the help lists them. */
    static final List<String> NAMES = List.of(
            "open",
            "plan",
            "check",
            "blowers",
            "pipes",
            "stages",
            "everyday",
            "sure",
            "fit",
            "outage",
            "report",
            "network",
            "solve",
            "schema",
            "demos",
            "help");

    /** Those that need nothing but a room. */
    private static final List<String> PLAIN = List.of("open", "plan", "check", "blowers");

    private Commands() {}

    /** The command that a line begins with, alone; all where it begins with none, or asks for help, which tells of all. */
    static List<Command> askedBy(String... line) {
        boolean isAboutAll = line.length == 0 || line[0].equals("help") || !NAMES.contains(line[0]);
        return isAboutAll ? NAMES.stream().map(Commands::made).toList() : List.of(made(line[0]));
    }

    /**
     * What the plainest line asks for, a quick command and its room: understood without the library that reads all others,
     * which takes about a quarter of the time that such a line needs. Empty for any other line.
     */
    static Optional<RoomCommand> plainlyAsked(String... line) {
        boolean isPlain = line.length == 2 && PLAIN.contains(line[0]) && isPlain(line[1]);
        return isPlain && made(line[0]) instanceof RoomCommand command
                ? Optional.of(command.about(line[1]))
                : Optional.empty();
    }

    /** A word that is itself: an option begins with a dash, and {@code @} with the name of a file of more words. */
    private static boolean isPlain(String word) {
        return !word.startsWith("-") && !word.startsWith("@");
    }

    private static Command made(String name) {
        return switch (name) {
            case "open" -> new OpenCommand();
            case "plan" -> new PlanCommand();
            case "check" -> new CheckCommand();
            case "blowers" -> new BlowersCommand();
            case "pipes" -> new PipesCommand();
            case "stages" -> new StagesCommand();
            case "everyday" -> new EverydayCommand();
            case "sure" -> new SureCommand();
            case "fit" -> new FitCommand();
            case "outage" -> new OutageCommand();
            case "report" -> new ReportCommand();
            case "network" -> new NetworkCommand();
            case "solve" -> new SolveCommand();
            case "schema" -> new SchemaCommand();
            case "demos" -> new DemosCommand();
            case "help" -> new HelpCommand();
            default -> throw new IllegalArgumentException(name + " is no command");
        };
    }
}
