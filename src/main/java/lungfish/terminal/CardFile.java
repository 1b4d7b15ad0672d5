package lungfish.terminal;

import java.nio.file.Path;
import java.util.List;
import lungfish.print.PdfFile;
import lungfish.print.Printout;

/** A PDF that a command is asked to write beside its answer. */
record CardFile(Path file) {
    /** The answer, once the pages are written, whole or not at all; else what stands in the way. */
    Outcome after(Outcome.Answer answer, Printout pages, boolean saysSo) {
        return new Written("--card", file, List.of(".pdf"))
                .trouble(() -> PdfFile.bytes(pages))
                .map(problem -> Outcome.refused(List.of(problem)))
                .orElseGet(() -> saysSo
                        ? new Outcome.Answer(answer.exit(), answer.text() + "\nThe drill card is in " + file + ".\n")
                        : answer);
    }
}
