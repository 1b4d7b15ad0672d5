package lungfish.terminal;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.function.ToIntFunction;

/** What a run of the program said: its exit code, and what it wrote where, read as UTF-8. */
record Said(int exit, String out, String err) {
    /** Runs a command line. */
    static Said by(String... args) {
        return by(console -> Terminal.run(args, console.out(), console.err()));
    }

    /** The streams are plain ones of the platform's own charset, as a process has them. */
    static Said by(ToIntFunction<Console> run) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = run.applyAsInt(new Console(new PrintStream(out), new PrintStream(err)));
        return new Said(exit, out.toString(UTF_8), err.toString(UTF_8));
    }
}
