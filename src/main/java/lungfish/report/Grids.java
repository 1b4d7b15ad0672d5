package lungfish.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lungfish.document.Part;

/** A table of a document, row by row. */
final class Grids {
    private final String key;
    private final String title;
    private final List<Part.Column> columns;
    private final List<List<Part.Cell>> rows = new ArrayList<>();

    Grids(String key, String title, Part.Column... columns) {
        this.key = key;
        this.title = title;
        this.columns = List.of(columns);
    }

    /** Adds a row, a text for each column. */
    void row(String... cells) {
        rows.add(cells(cells));
    }

    private List<Part.Cell> cells(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        return Arrays.stream(cells).map(Part.Cell::new).toList();
    }

    Part.Grid grid() {
        return new Part.Grid(key, title, columns, rows, Optional.empty());
    }

    Part.Grid totalled(String... totals) {
        return new Part.Grid(key, title, columns, rows, Optional.of(cells(totals)));
    }
}
