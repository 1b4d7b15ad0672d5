package lungfish;

import java.io.PrintStream;
import lungfish.terminal.Exit;
import lungfish.terminal.Terminal;

/** Starts the planner: the command line that is given, or the plan of a demo room where none is. */
public final class Lungfish {
    private static final String[] WITHOUT_A_COMMAND = {"plan", "basement-rainbows"};

    private Lungfish() {}

    /** Runs the command line in {@code args} and ends the process with its exit code. */
    public static void main(String[] args) {
        int exit = run(args, System.out, System.err);
        if (exit != Exit.FINE) {
            System.exit(exit); // only then: a build that runs this in its own process goes on
        }
    }

    static int run(String[] args, PrintStream out, PrintStream err) {
        return Terminal.run(args.length == 0 ? WITHOUT_A_COMMAND : args, out, err);
    }
}
