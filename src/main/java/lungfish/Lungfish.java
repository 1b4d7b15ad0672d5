package lungfish;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Optional;
import lungfish.desk.ConfigFolder;
import lungfish.desktop.Windows;
import lungfish.terminal.Exit;
import lungfish.terminal.Terminal;

/** Starts the planner: the window where there is a display and no command, else the command line. */
public final class Lungfish {
    private static final String[] WITHOUT_A_COMMAND = {"plan", "basement-rainbows"};
    private static final String OPEN = "open";

    private Lungfish() {}

    /**
     * Opens the window on a demo room, or on the file of {@code open FILE}; returns when the last window is closed. Any other
     * command line is run as it is, and ends the process with its exit code. Without a display the demo room is planned as
     * text.
     */
    public static void main(String[] args) throws InterruptedException {
        boolean asksForWindow = args.length == 0 || isOpen(args);
        if (asksForWindow && Display.isUsable()) {
            Windows.open(ConfigFolder.here(), isOpen(args) ? Optional.of(Path.of(args[1])) : Optional.empty())
                    .awaitClosed();
            return;
        }
        int exit = run(args, System.out, System.err);
        if (exit != Exit.FINE) {
            System.exit(exit); // only then: a build that runs this in its own process goes on
        }
    }

    private static boolean isOpen(String[] args) {
        return args.length == 2 && args[0].equals(OPEN);
    }

    /** Without a display, what would be opened is planned as text. */
    static int run(String[] args, PrintStream out, PrintStream err) {
        if (isOpen(args)) {
            return Terminal.run(new String[] {"plan", args[1]}, out, err);
        }
        return Terminal.run(args.length == 0 ? WITHOUT_A_COMMAND : args, out, err);
    }
}
