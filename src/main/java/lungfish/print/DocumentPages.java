package lungfish.print;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.document.Document;
import lungfish.drawing.FigurePainter;

/**
 * A document on paper. Headings stay with what follows, tables break between rows with their heading again, totals stay with
 * rows above them, a step or a picture is never torn. Every page says which it is, of how many.
 */
public final class DocumentPages {
    private static final double FOOT_PT = 22;
    private static final Lettering FOOT = Lettering.regular(7.5);

    private final Document document;
    private final Paper paper;
    private final Optional<String> date;

    private DocumentPages(Document document, Paper paper, Optional<String> date) {
        this.document = document;
        this.paper = paper;
        this.date = date;
    }

    /**
     * The document, laid.
     *
     * @param date printed in the footer as it is
     */
    public static Printout of(Document document, FigurePainter figures, Paper paper, Optional<String> date) {
        return new DocumentPages(document, paper, date).laid(figures);
    }

    private Printout laid(FigurePainter figures) {
        Rectangle2D inside = paper.inside();
        double heightPt = inside.getHeight() - FOOT_PT;
        List<Unit> units = new DocumentUnits(figures, inside.getWidth(), heightPt).of(document);
        List<List<Mark>> pages = Flow.pages(units, inside.getX(), inside.getY(), inside.getWidth(), heightPt);
        List<PrintedPage> printed = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Mark> marks = new ArrayList<>(pages.get(i));
            marks.addAll(foot(i + 1, pages.size()));
            printed.add(new PrintedPage(paper, marks));
        }
        return new Printout(document.title(), printed);
    }

    private List<Mark> foot(int page, int of) {
        Rectangle2D inside = paper.inside();
        double y = inside.getMaxY() - 3;
        double rule = y - FOOT.linePt() - 2;
        String number = "page " + page + " of " + of;
        double numberPt = FOOT.width(number);
        String name = document.title() + date.map(day -> " · " + day).orElse("");
        String shown = FOOT.fitting(name, inside.getWidth() - numberPt - 2 * FOOT.sizePt());
        return List.of(
                new Mark.Rule(inside.getX(), rule, inside.getMaxX(), rule, 0.4),
                new Mark.Words(shown, FOOT, inside.getX(), y, false),
                new Mark.Words(number, FOOT, inside.getMaxX() - numberPt, y, false));
    }
}
