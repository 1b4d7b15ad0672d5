package lungfish.desktop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.drawing.Shown;
import lungfish.edit.Reader;
import lungfish.edit.Sheet;
import lungfish.room.OutletId;

/**
 * Cells of the outlets table on their way to a spreadsheet or from it. Answers of the plan go out and are passed over on the
 * way in. Nothing assumed goes out: what the room does not say is an empty cell.
 *
 * @param cells those of inputs alone
 * @param rows the outlets that the lines go into
 * @param columns the inputs that the cells go into
 */
record OutletsBlock(Sheet cells, List<OutletId> rows, List<OutletColumn> columns) {
    private static final Map<String, OutletColumn> BY_HEADING = byHeading();

    OutletsBlock {
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
    }

    private static Map<String, OutletColumn> byHeading() {
        Map<String, OutletColumn> columns = new HashMap<>();
        OutletColumn.ALL.forEach(column -> columns.put(plain(column.heading()), column));
        return columns;
    }

    private static String plain(String heading) {
        return heading.toLowerCase(Locale.ROOT);
    }

    /** What goes out. */
    static Sheet of(List<OutletRow> rows, List<OutletColumn> columns, boolean headings, Reader reader) {
        Stream<List<String>> above =
                headings ? Stream.of(columns.stream().map(OutletColumn::heading).toList()) : Stream.empty();
        Stream<List<String>> lines = rows.stream().map(row -> columns.stream()
                .map(column -> column.isAssumed(row, reader) ? "" : column.says(row, reader))
                .toList());
        return new Sheet(Stream.concat(above, lines).toList());
    }

    /** Whether the first line is one of headings, so that they say what the columns are. */
    static boolean isHeaded(Sheet sheet) {
        List<String> first = sheet.rows().isEmpty() ? List.of() : sheet.rows().get(0);
        return !first.isEmpty() && first.stream().map(OutletsBlock::plain).allMatch(BY_HEADING::containsKey);
    }

    /**
     * What comes in.
     *
     * @param rows the outlets from the chosen row on; under headings a column of their names says better which they are
     * @param from the columns from the chosen one on; headings in the first line say better which they are
     */
    static OutletsBlock read(Sheet sheet, List<OutletId> rows, List<OutletColumn> from, Shown shown) {
        boolean headed = isHeaded(sheet);
        List<OutletColumn> columns = headed
                ? sheet.rows().get(0).stream()
                        .map(heading -> Optional.ofNullable(BY_HEADING.get(plain(heading))))
                        .flatMap(Optional::stream)
                        .toList()
                : from;
        Sheet cells = headed ? sheet.from(1) : sheet;
        List<OutletId> meant =
                headed ? named(cells, columns.indexOf(OutletColumn.OUTLET)).orElse(rows) : rows;
        boolean[] isInput = new boolean[columns.size()];
        List<OutletColumn> inputs = new ArrayList<>();
        for (int i = 0; i < isInput.length; i++) {
            isInput[i] = columns.get(i).input(shown).isPresent();
            if (isInput[i]) {
                inputs.add(columns.get(i));
            }
        }
        return new OutletsBlock(cells.keeping(i -> i >= isInput.length || isInput[i]), meant, inputs);
    }

    /** The outlets that a column of the cells names, where every line names one. */
    private static Optional<List<OutletId>> named(Sheet cells, int column) {
        boolean all = column >= 0
                && cells.rows().stream()
                        .allMatch(row -> row.size() > column && !row.get(column).isEmpty());
        return all
                ? Optional.of(cells.rows().stream()
                        .map(row -> new OutletId(row.get(column)))
                        .toList())
                : Optional.empty();
    }
}
