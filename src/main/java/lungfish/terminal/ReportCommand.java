package lungfish.terminal;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lungfish.build.BuildPlan;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.CatalogueFiles;
import lungfish.document.Document;
import lungfish.drawing.FigurePainter;
import lungfish.drawing.PaperFigures;
import lungfish.drawing.RoomPicture;
import lungfish.json.JsonWriter;
import lungfish.json.Problem;
import lungfish.plan.Plan;
import lungfish.print.DocumentPages;
import lungfish.print.Paper;
import lungfish.print.PdfFile;
import lungfish.quantity.Quantities;
import lungfish.report.DocumentCsv;
import lungfish.report.RoomReport;
import lungfish.web.SvgPicture;
import lungfish.web.WebPage;
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
                    "The day that is printed on it, as 2026-03-01; left out: none, so that the same room gives the"
                            + " same bytes.")
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
        Catalogue catalogue = CatalogueFiles.load();
        BuildPlan build = BuildPlan.of(plan, catalogue);
        Document document = RoomReport.of(plan, build, catalogue, quantities);
        List<Problem> wrong = wrong(document);
        if (!wrong.isEmpty()) {
            return Outcome.refused(wrong);
        }
        FigurePainter figures = new PaperFigures(plan, build, quantities);
        Map<String, Supplier<byte[]>> forms = Map.of(
                ".pdf", () -> PdfFile.bytes(DocumentPages.of(document, figures, paper(quantities), date)),
                ".html", () -> WebPage.html(document, figures, date),
                ".csv", () -> csv(document).getBytes(StandardCharsets.UTF_8),
                ".svg",
                        () -> SvgPicture.file(
                                RoomPicture.of(plan, quantities), plan.room().name()),
                ".png", () -> RoomPicture.png(plan, quantities));
        Written file = new Written("--to", to, List.of(".pdf", ".html", ".csv", ".svg", ".png"));
        Supplier<byte[]> form = () ->
                forms.getOrDefault(file.ending().orElse(""), () -> new byte[0]).get();
        return file.trouble(form)
                .map(problem -> Outcome.refused(List.of(problem)))
                .orElseGet(() -> told(plan, isJson() ? json() : "The report is in " + to + ".\n"));
    }

    private String json() {
        return JsonWriter.text(fields -> fields.text("file", to.toString()));
    }

    private Paper paper(Quantities quantities) {
        return paper.map(word -> word.paper).orElseGet(() -> Paper.of(quantities.units()));
    }

    private String csv(Document document) {
        return list.flatMap(key -> DocumentCsv.one(document, key)).orElseGet(() -> DocumentCsv.all(document));
    }

    private List<Problem> wrong(Document document) {
        List<String> keys = DocumentCsv.keys(document);
        if (list.isPresent() && !keys.contains(list.get())) {
            return List.of(new Problem(
                    "", "--list: there is no list \"" + list.get() + '"', "one of " + String.join(", ", keys)));
        }
        if (date.isPresent() && !isDay(date.get())) {
            return List.of(new Problem("", "--date is \"" + date.get() + '"', "a day such as 2026-03-01"));
        }
        return List.of();
    }

    private static boolean isDay(String text) {
        try {
            LocalDate.parse(text);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }
}
