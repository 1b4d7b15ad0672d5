package lungfish.terminal;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where answers and complaints go: always as UTF-8, whatever the locale says. */
record Console(PrintStream out, PrintStream err) {
    /** Answers go out; problems too where a program reads them, else beside the answers. */
    void say(Outcome outcome, boolean isJson) {
        if (outcome instanceof Outcome.Answer answer) {
            write(out, answer.text());
        } else if (outcome instanceof Outcome.Refused refused) {
            write(isJson ? out : err, isJson ? refused.json() : refused.text());
        }
    }

    private static void write(PrintStream stream, String text) {
        stream.writeBytes(text.getBytes(StandardCharsets.UTF_8));
        stream.flush();
    }
}
