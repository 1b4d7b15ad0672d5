package lungfish.web;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lungfish.build.BuildPlan;
import lungfish.catalogue.Catalogue;
import lungfish.document.Document;
import lungfish.drawing.FigurePainter;
import lungfish.drawing.PaperFigures;
import lungfish.drawing.RoomPicture;
import lungfish.logbook.Logbook;
import lungfish.plan.Plan;
import lungfish.print.DocumentPages;
import lungfish.print.Paper;
import lungfish.print.PdfFile;
import lungfish.print.Printout;
import lungfish.quantity.Quantities;
import lungfish.report.DocumentCsv;
import lungfish.report.RoomReport;

/**
 * The report of a room in every form that it can be given. The same plan gives the same bytes.
 *
 * @param date printed on it as it is; empty: none
 */
public record RoomForms(
        Plan plan, Document document, FigurePainter figures, Quantities quantities, Optional<String> date) {
    /** The endings of the files, the usual one first. */
    public static final List<String> ENDINGS = List.of(".pdf", ".html", ".csv", ".svg", ".png");

    /**
     * Those of a plan.
     *
     * @param today printed on them, and the day for which the log is told; empty: nothing is printed, and the log is told for the
     *     day of its newest entry, since the clock would give other bytes every day
     */
    public static RoomForms of(Plan plan, Catalogue catalogue, Quantities quantities, Optional<LocalDate> today) {
        BuildPlan build = BuildPlan.of(plan, catalogue);
        Optional<Logbook> logbook =
                plan.room().log().lastDay().map(last -> Logbook.of(plan, catalogue, today.orElse(last)));
        Document document = RoomReport.of(plan, build, logbook, catalogue, quantities);
        return new RoomForms(
                plan,
                document,
                new PaperFigures(plan, build, logbook, quantities),
                quantities,
                today.map(day -> "As of " + day));
    }

    public Printout pages(Paper paper) {
        return DocumentPages.of(document, figures, paper, date);
    }

    /**
     * The file with one of the {@link #ENDINGS}.
     *
     * @throws IllegalArgumentException for any other
     */
    public byte[] bytes(String ending, Paper paper) {
        return switch (ending) {
            case ".pdf" -> PdfFile.bytes(pages(paper));
            case ".html" -> WebPage.html(document, figures, date);
            case ".csv" -> DocumentCsv.all(document).getBytes(StandardCharsets.UTF_8);
            case ".svg" ->
                SvgPicture.file(RoomPicture.of(plan, quantities), plan.room().name());
            case ".png" -> RoomPicture.png(plan, quantities);
            default -> throw new IllegalArgumentException("no form " + ending);
        };
    }
}
