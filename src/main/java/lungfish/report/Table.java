package lungfish.report;

import java.util.ArrayList;
import java.util.List;

/** A table of text with columns that line up: words to the left, numbers to the right. */
public final class Table {
    private static final String GAP = "  ";

    /** A column: its heading, and whether it holds numbers. */
    public record Column(String heading, boolean isNumber) {
        public static Column words(String heading) {
            return new Column(heading, false);
        }

        public static Column numbers(String heading) {
            return new Column(heading, true);
        }
    }

    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    public Table(Column... columns) {
        this.columns = List.of(columns);
    }

    /** Adds a row, a text for each column. */
    public Table row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + columns.size() + " columns");
        }
        rows.add(List.of(cells));
        return this;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The lines, the headings first. */
    public List<String> lines() {
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            widths.add(width(i));
        }
        List<String> lines = new ArrayList<>();
        lines.add(line(columns.stream().map(Column::heading).toList(), widths));
        rows.forEach(row -> lines.add(line(row, widths)));
        return lines;
    }

    private int width(int column) {
        int heading = length(columns.get(column).heading());
        return rows.stream().mapToInt(row -> length(row.get(column))).reduce(heading, Math::max);
    }

    private String line(List<String> cells, List<Integer> widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String blanks = " ".repeat(widths.get(i) - length(cells.get(i)));
            line.append(i == 0 ? "" : GAP)
                    .append(columns.get(i).isNumber() ? blanks + cells.get(i) : cells.get(i) + blanks);
        }
        return line.toString().stripTrailing();
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
