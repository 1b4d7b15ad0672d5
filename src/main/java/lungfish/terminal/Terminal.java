package lungfish.terminal;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Runs one command line. Knows no process: streams come in, the exit code goes out. */
public final class Terminal {
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
        return new Terminal(new Console(out, err), Commands.askedBy(args)).run(args);
    }

    /** Whether this word is a command, and so no file. */
    public static boolean isCommand(String word) {
        return Commands.NAMES.contains(word);
    }

    int run(String... args) {
        Outcome outcome = outcome(args);
        console.say(outcome, Arrays.asList(args).contains("--json"));
        return outcome.exit();
    }

    private Outcome outcome(String[] args) {
        try {
            Optional<RoomCommand> plain = Commands.plainlyAsked(args);
            return plain.isPresent() ? plain.get().call() : new Understood(commands).outcome(args);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError | LinkageError fault) {
            return Faults.outcome(fault, List.of(args));
        }
    }
}
