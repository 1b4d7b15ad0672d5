package lungfish.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lungfish.json.Problem;

/** Says that the program itself is at fault: one line for the person, the details in a file. */
final class Faults {
    private Faults() {}

    static Outcome.Refused outcome(Throwable fault, List<String> args) {
        String found = "a fault of the program itself (" + fault.getClass().getSimpleName() + "), details in "
                + saved(details(fault, args));
        Problem problem = new Problem("", found, "an answer; the input may be well");
        return new Outcome.Refused(Exit.FAULT, List.of(problem));
    }

    private static String details(Throwable fault, List<String> args) {
        StringWriter details = new StringWriter();
        details.write("Command line: " + args + "\nJava " + Runtime.version() + "\n");
        fault.printStackTrace(new PrintWriter(details, true));
        return details.toString();
    }

    private static String saved(String details) {
        try {
            Path file = Files.createTempFile("lungfish-fault-", ".txt");
            Files.writeString(file, details);
            return file.toString();
        } catch (IOException e) {
            return "no file, for none could be written";
        }
    }
}
