package lungfish.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.room.Tank;

/**
 * A list of tanks from a spreadsheet: one row each, under headings. It is looked at before anything is done with it.
 *
 * @param headings as they stand in its first row
 * @param rows the others, without those that are wholly empty; each with its number in the file
 */
public record TankList(List<String> headings, List<Row> rows) {
    /** A row, and its number in the file, where the headings are row 1. */
    public record Row(int number, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** What stands in a column; empty beyond the last cell. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        Row with(int column, String text) {
            List<String> others = new ArrayList<>(cells);
            while (others.size() <= column) {
                others.add("");
            }
            others.set(column, text);
            return new Row(number, others);
        }
    }

    /**
     * A tank as it was read.
     *
     * @param rack its name; absent: the list does not say
     * @param shelf from the bottom, counted from 1
     */
    public record Item(
            int row,
            String name,
            Optional<String> rack,
            int shelf,
            Tank.Size outside,
            double waterDepthM,
            OptionalDouble temperatureK,
            Optional<String> device) {}

    /** What would be brought in, and every cell that cannot be read. A row with a bad cell brings nothing in. */
    public record Preview(List<Item> items, List<BadCell> bad) {
        public Preview {
            items = List.copyOf(items);
            bad = List.copyOf(bad);
        }
    }

    public TankList {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /** Reads a list parted by commas, semicolons or tabs; empty where there is nothing below its headings. */
    public static Optional<TankList> read(String text) {
        return read(text, Sheet.Separator.of(text), true);
    }

    /** Reads a list; empty where it has no row of a tank. One without headings gets some: "Column 1". */
    static Optional<TankList> read(String text, Sheet.Separator separator, boolean headed) {
        List<List<String>> lines = Sheet.of(text, separator).rows();
        List<Row> rows = new ArrayList<>();
        for (int i = headed ? 1 : 0; i < lines.size(); i++) {
            if (lines.get(i).stream().anyMatch(cell -> !cell.isEmpty())) {
                rows.add(new Row(i + 1, lines.get(i)));
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new TankList(headings(lines, headed), rows));
    }

    /** One for each column, also where the first row is shorter than others. */
    private static List<String> headings(List<List<String>> lines, boolean headed) {
        int wide = lines.stream().mapToInt(List::size).max().orElse(0);
        List<String> headings = new ArrayList<>(headed ? lines.get(0) : List.of());
        for (int i = 0; i < wide; i++) {
            String numbered = "Column " + (i + 1);
            if (i >= headings.size()) {
                headings.add(numbered);
            } else if (headings.get(i).isEmpty() || headings.indexOf(headings.get(i)) < i) {
                headings.set(i, (headings.get(i) + " " + numbered).strip());
            }
        }
        return headings;
    }

    /** With another text in a cell. */
    TankList with(int rowNumber, int column, String text) {
        return new TankList(
                headings,
                rows.stream()
                        .map(row -> row.number() == rowNumber ? row.with(column, text) : row)
                        .toList());
    }

    /** Which column means what, as far as the headings tell: each property once. */
    public Map<Integer, TankProperty> guess() {
        Map<Integer, TankProperty> mapping = new LinkedHashMap<>();
        for (int i = 0; i < headings.size(); i++) {
            int column = i;
            TankProperty.of(headings.get(i))
                    .filter(property -> !mapping.containsValue(property))
                    .ifPresent(property -> mapping.put(column, property));
        }
        return mapping;
    }

    /**
     * Reads the rows.
     *
     * @param mapping which column means what; columns that are not in it are left out
     */
    public Preview preview(Map<Integer, TankProperty> mapping, Reader reader) {
        return preview(mapping, DecimalMark.of(this), reader);
    }

    /** The same, with what stands before the decimals. */
    Preview preview(Map<Integer, TankProperty> mapping, DecimalMark decimals, Reader reader) {
        List<Item> items = new ArrayList<>();
        List<BadCell> bad = new ArrayList<>();
        for (Row row : rows) {
            TankRow reading = new TankRow(this, row, mapping, decimals, reader, bad);
            int told = bad.size();
            Optional<Item> item = reading.item();
            item.filter(each -> bad.size() == told).ifPresent(items::add);
        }
        return new Preview(items, bad);
    }
}
