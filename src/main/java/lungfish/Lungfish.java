package lungfish;

import java.io.PrintStream;
import java.util.Optional;
import lungfish.desk.ConfigFolder;
import lungfish.desktop.Windows;
import lungfish.terminal.Exit;
import lungfish.terminal.Terminal;

/** Starts the planner: the window where there is a display and no command, else the command line. */
public final class Lungfish {
    private Lungfish() {}

    /**
     * Opens the window on the room that is asked for; returns when the last window is closed. Any other command line is run
     * as it is, and ends the process with its exit code. Without a display the room is planned as text.
     */
    public static void main(String[] args) throws InterruptedException {
        Optional<String> room = Asked.room(args).filter(Asked::isPath);
        if (room.isPresent() && Display.isUsable()) {
            Windows.open(ConfigFolder.here(), room.get()).awaitClosed();
            return;
        }
        int exit = run(args, System.out, System.err);
        if (exit != Exit.FINE) {
            System.exit(exit); // only then: a build that runs this in its own process goes on
        }
    }

    /** What would be opened is planned as text. */
    static int run(String[] args, PrintStream out, PrintStream err) {
        String[] words =
                Asked.room(args).map(room -> new String[] {"open", room}).orElse(args);
        return Terminal.run(words, out, err);
    }
}
