package lungfish.terminal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lungfish.catalogue.CatalogueFiles;
import lungfish.document.Document;
import lungfish.json.JsonWriter;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.print.Paper;
import lungfish.quantity.Quantities;
import lungfish.report.DocumentCsv;
import lungfish.web.RoomForms;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Writes what is built of a room into a file. */
@CommandLine.Command(
        name = "report",
        description = "Write the build sheet of a room: drawings, parts, cuts, taps, settings, first start and log.")
final class ReportCommand extends RoomCommand {
    @Option(
            names = "--to",
            paramLabel = "FILE",
            required = true,
            description =
                    "Where to; the ending says as what: .pdf, .html, .csv (the lists), .svg or .png (the room alone).")
    private Path to = Path.of("");

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            description = "What it is printed on; left out: the usual one of the units shown.")
    private Optional<PaperWord> paper = Optional.empty();

    @Option(names = "--list", paramLabel = "KEY", description = "Of a .csv: one list alone, such as parts.")
    private Optional<String> list = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description =
                    "The day that is printed on it and for which the log is told, as 2026-03-01; left out: none is printed,"
                            + " and the log is told for its newest day, so that the same room gives the same bytes.")
    private Optional<String> date = Optional.empty();

    /** What may be asked for. */
    enum PaperWord {
        A4(Paper.A4),
        LETTER(Paper.US_LETTER);

        private final Paper paper;

        PaperWord(Paper paper) {
            this.paper = paper;
        }
    }

    @Override
    Outcome answer(Plan plan, Quantities quantities) {
        RoomForms forms = RoomForms.of(plan, CatalogueFiles.load(), quantities, date.flatMap(ReportCommand::day));
        List<Problem> wrong = wrong(forms.document());
        if (!wrong.isEmpty()) {
            return Outcome.refused(wrong);
        }
        Written file = new Written("--to", to, RoomForms.ENDINGS);
        return file.trouble(() -> bytes(forms, file.ending().orElseThrow(), quantities))
                .map(problem -> Outcome.refused(List.of(problem)))
                .orElseGet(() -> told(plan, isJson() ? json() : "The report is in " + to + ".\n"));
    }

    private byte[] bytes(RoomForms forms, String ending, Quantities quantities) {
        Optional<String> alone =
                list.filter(key -> ending.equals(".csv")).flatMap(key -> DocumentCsv.one(forms.document(), key));
        return alone.map(text -> text.getBytes(StandardCharsets.UTF_8))
                .orElseGet(() -> forms.bytes(ending, paper(quantities)));
    }

    private String json() {
        return JsonWriter.text(fields -> fields.text("file", to.toString()));
    }

    private Paper paper(Quantities quantities) {
        return paper.map(word -> word.paper).orElseGet(() -> Paper.of(quantities.units()));
    }

    private List<Problem> wrong(Document document) {
        List<String> keys = DocumentCsv.keys(document);
        if (list.isPresent() && !keys.contains(list.get())) {
            return List.of(new Problem(
                    "", "--list: there is no list \"" + list.get() + '"', "one of " + String.join(", ", keys)));
        }
        if (date.isPresent() && day(date.get()).isEmpty()) {
            return List.of(new Problem("", "--date is \"" + date.get() + '"', "a day such as 2026-03-01"));
        }
        return List.of();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
