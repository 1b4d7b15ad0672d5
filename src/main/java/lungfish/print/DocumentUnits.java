package lungfish.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.document.Document;
import lungfish.document.Figure;
import lungfish.document.Part;
import lungfish.drawing.FigurePainter;

/** The parts of a document as units for pages. */
final class DocumentUnits {
    private static final Lettering TITLE = Lettering.bold(20);
    private static final Lettering SECTION = Lettering.bold(13);
    private static final Lettering LIST = Lettering.bold(9.5);
    private static final Lettering BODY = Lettering.regular(9);
    private static final Lettering BOLD = Lettering.bold(9);
    private static final Lettering CELL = Lettering.regular(8);
    private static final Lettering HEAD = Lettering.bold(8);
    private static final Lettering FINE = Lettering.regular(7.5);
    private static final int ANY = 200; // lines: nothing is cut on paper
    private static final double RACK_SHARE = 0.46; // of a page: two racks on one
    private static final double FACT_SHARE = 0.36;
    private static final double NARROW_GAP_PT = 5;
    private static final double GAP_PT = 9;
    private static final double WIDE_GAP_PT = 20;

    private final FigurePainter figures;
    private final double widthPt;
    private final double heightPt;
    private final List<Unit> units = new ArrayList<>();

    DocumentUnits(FigurePainter figures, double widthPt, double heightPt) {
        this.figures = figures;
        this.widthPt = widthPt;
        this.heightPt = heightPt;
    }

    List<Unit> of(Document document) {
        add(new Text(document.title(), TITLE, ANY), 0, true);
        add(new Text(document.subtitle(), BODY, ANY), GAP_PT, false);
        document.sections().forEach(this::section);
        return List.copyOf(units);
    }

    private void add(Block block, double gapPt, boolean staysWithNext) {
        units.add(new Unit.Whole(block, gapPt, staysWithNext));
    }

    private void section(Document.Section section) {
        if (section.newPage()) {
            units.add(new Unit.PageEnd());
        }
        add(new Band(section.title(), SECTION, NARROW_GAP_PT), WIDE_GAP_PT, true);
        section.parts().forEach(this::part);
    }

    private void part(Part part) {
        if (part instanceof Part.Paragraph paragraph) {
            add(new Text(paragraph.text(), BODY, ANY), GAP_PT, false);
        } else if (part instanceof Part.Caution caution) {
            add(new Warned(new Item("!", caution.text(), BOLD, BODY, ANY)), GAP_PT, false);
        } else if (part instanceof Part.Facts facts) {
            facts.facts().forEach(this::fact);
        } else if (part instanceof Part.Grid grid) {
            grid(grid);
        } else if (part instanceof Part.Checklist list) {
            steps(list);
        } else if (part instanceof Part.Picture picture) {
            picture(picture);
        }
    }

    private void fact(Part.Fact fact) {
        Block what = new Text(fact.what(), BODY, ANY);
        add(new Beside(what, new Text(fact.said(), BOLD, ANY), FACT_SHARE, GAP_PT), NARROW_GAP_PT, false);
    }

    private void grid(Part.Grid grid) {
        if (!grid.title().isEmpty()) {
            add(new Text(grid.title(), LIST, ANY), WIDE_GAP_PT * 0.7, true);
        }
        List<Grid.Heading> headings = grid.columns().stream()
                .map(column ->
                        column.isFigures() ? Grid.Heading.figures(column.title()) : Grid.Heading.words(column.title()))
                .toList();
        List<List<String>> rows = Stream.concat(grid.rows().stream(), grid.totals().stream())
                .map(row -> row.stream().map(Part.Cell::text).toList())
                .toList();
        units.add(new Unit.Rows(
                new Grid(headings, rows, HEAD, CELL, ANY, grid.totals().isPresent()), GAP_PT));
    }

    private void steps(Part.Checklist list) {
        for (int i = 0; i < list.steps().size(); i++) {
            add(new CheckRow(i + 1, list.steps().size(), list.steps().get(i), BOLD, BODY, FINE), GAP_PT, false);
        }
    }

    private void picture(Part.Picture picture) {
        double pagePt = heightPt - 4 * SECTION.linePt() - 2 * FINE.linePt();
        double roomPt = picture.figure() instanceof Figure.RackFront ? RACK_SHARE * pagePt : pagePt;
        figures.fitted(picture.figure(), widthPt, roomPt).ifPresent(fitted -> {
            String caption = caption(picture, fitted);
            Block drawn = (x, y, wide) -> new Block.Laid(
                    fitted.heightPt(), List.of(new Mark.Drawn(fitted, x + (wide - fitted.widthPt()) / 2, y)));
            add(new Column(NARROW_GAP_PT, List.of(drawn, new Text(caption, FINE, ANY))), GAP_PT, false);
        });
    }

    private static String caption(Part.Picture picture, FigurePainter.Fitted fitted) {
        Optional<String> scale = fitted.scale().map(words -> "Scale " + words + " on this sheet.");
        return Stream.of(picture.caption(), scale.orElse(""))
                .filter(text -> !text.isEmpty())
                .reduce((one, other) -> one + " " + other)
                .orElse("");
    }
}
