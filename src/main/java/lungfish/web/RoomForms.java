package lungfish.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lungfish.build.BuildPlan;
import lungfish.catalogue.Catalogue;
import lungfish.document.Document;
import lungfish.drawing.FigurePainter;
import lungfish.drawing.PaperFigures;
import lungfish.drawing.RoomPicture;
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

    /** Those of a plan. */
    public static RoomForms of(Plan plan, Catalogue catalogue, Quantities quantities, Optional<String> date) {
        BuildPlan build = BuildPlan.of(plan, catalogue);
        Document document = RoomReport.of(plan, build, catalogue, quantities);
        return new RoomForms(plan, document, new PaperFigures(plan, build, quantities), quantities, date);
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
