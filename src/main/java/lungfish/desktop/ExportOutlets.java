package lungfish.desktop;

import java.util.List;
import java.util.stream.IntStream;
import lungfish.desk.TextFiles;

/** Writes the outlets table as it is shown, sorted and filtered, as comma-separated values for a spreadsheet. */
final class ExportOutlets extends Act {
    private final transient WindowPane window;

    ExportOutlets(WindowPane window) {
        super("Export outlets as CSV…", 'E', null);
        this.window = window;
    }

    @Override
    void act() {
        View view = window.view();
        OutletsTable table = window.below().table();
        List<OutletRow> rows =
                IntStream.range(0, table.getRowCount()).mapToObj(table::outlet).toList();
        String text =
                OutletsBlock.of(rows, OutletColumn.ALL, true, view.reader()).commaSeparated();
        window.files().asking().toSaveTable("outlets.csv").ifPresent(file -> new TextFiles(view.desk())
                .write(file, text, table.edits()::say));
    }
}
