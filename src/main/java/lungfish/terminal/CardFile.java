package lungfish.terminal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lungfish.json.Problem;
import lungfish.print.PdfFile;
import lungfish.print.Printout;
import lungfish.roomfile.AtomicSave;

/** A PDF that a command is asked to write beside its answer. */
record CardFile(Path file) {
    private static final String ENDING = ".pdf";

    /** The answer, once the pages are written, whole or not at all; else what stands in the way. */
    Outcome after(Outcome.Answer answer, Printout pages, boolean saysSo) {
        return trouble(pages)
                .map(problem -> Outcome.refused(List.of(problem)))
                .orElseGet(() -> saysSo
                        ? new Outcome.Answer(answer.exit(), answer.text() + "\nThe drill card is in " + file + ".\n")
                        : answer);
    }

    private Optional<Problem> trouble(Printout pages) {
        String name = String.valueOf(file.getFileName());
        if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
            return Optional.of(cannot("its name does not end with " + ENDING)); // nobody's room is written over
        }
        if (Files.isDirectory(file)) {
            return Optional.of(cannot("it is a folder"));
        }
        try {
            AtomicSave.onThisDisk().save(file, PdfFile.bytes(pages));
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(cannot(reason(e)));
        }
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        return e instanceof AccessDeniedException ? "nothing may be written there" : String.valueOf(e.getMessage());
    }

    private Problem cannot(String why) {
        return new Problem(
                "",
                "--card: " + file + " cannot be written: " + why,
                "a name that ends with " + ENDING + ", in a folder that may be written to");
    }
}
