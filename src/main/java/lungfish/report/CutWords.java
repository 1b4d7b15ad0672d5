package lungfish.report;

import static lungfish.document.Part.Column.figures;
import static lungfish.document.Part.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lungfish.build.BuildPlan;
import lungfish.build.Cutting;
import lungfish.build.Piece;
import lungfish.catalogue.Catalogue;
import lungfish.document.Part;
import lungfish.quantity.Dimension;
import lungfish.quantity.Quantities;

/** What is cut from each stock length. */
final class CutWords {
    private final BuildPlan build;
    private final Catalogue catalogue;
    private final Quantities quantities;
    private final Names names;

    CutWords(BuildPlan build, Catalogue catalogue, Quantities quantities, Names names) {
        this.build = build;
        this.catalogue = catalogue;
        this.quantities = quantities;
        this.names = names;
    }

    List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        parts.add(new Part.Paragraph(
                "Cut to these lengths: what the fittings take off is taken off already. Lay each run out dry"
                        + " and measure one fitting of yours before you cut: fittings differ from maker to maker."));
        Grids grid = new Grids(
                "cuts",
                "Cut list",
                words("Pipe"),
                words("Stock"),
                words("Piece"),
                words("From"),
                words("To"),
                figures("Cut to"),
                figures("Left over"));
        build.cuts().forEach((size, cutting) -> rows(grid, size, cutting));
        parts.add(grid.grid());
        build.cuts().forEach((size, cutting) -> parts.add(new Part.Paragraph(verdict(size, cutting))));
        return parts;
    }

    private void rows(Grids grid, String size, Cutting cutting) {
        List<Piece> pieces = build.pieces(size);
        int number = 0;
        for (Cutting.Stock stock : cutting.stocks()) {
            number++;
            for (int i = 0; i < stock.pieces().size(); i++) {
                Piece piece = pieces.get(stock.pieces().get(i));
                boolean isLast = i == stock.pieces().size() - 1;
                grid.row(
                        pipe(size),
                        number + " of " + cutting.stocks().size(),
                        piece(piece),
                        fitting(piece.start().fitting()),
                        fitting(piece.end().fitting()),
                        quantities.tape(piece.cutM()),
                        isLast ? quantities.tape(stock.leftM()) : "");
            }
        }
    }

    private String pipe(String size) {
        return catalogue.pipe(size).map(pipe -> pipe.name()).orElse(size);
    }

    private String piece(Piece piece) {
        return names.of(piece.run().part()) + ", " + piece.number();
    }

    private String fitting(String id) {
        if (id.isEmpty()) {
            return "hose of the blower";
        }
        String name = BuildPlan.partName(catalogue, id);
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    private String verdict(String size, Cutting cutting) {
        String stocks = Sentences.counted(cutting.stocks().size(), "length") + " of "
                + quantities.show(cutting.stockM(), Dimension.LENGTH);
        String proof = cutting.proved()
                ? "fewer will not do."
                : "at least " + cutting.least() + " are needed; fewer than these were not found.";
        return pipe(size) + ": " + stocks + ", " + quantities.show(cutting.kerfM(), Dimension.BORE)
                + " for each cut counted; " + proof;
    }
}
