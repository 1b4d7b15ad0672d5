package lungfish.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lungfish.document.Document;
import lungfish.document.Part;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The lists of a document as comma-separated values (RFC 4180). No cell can run as a formula in a spreadsheet: one that begins
 * as formulas begin gets an apostrophe before it, unless it is a plain number (OWASP, "CSV Injection").
 */
public final class DocumentCsv {
    /** By it spreadsheet programs know that the file is UTF-8; without it some take it for the platform's own letters. */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");
    /** The signs that begin a formula, their wide forms among them, after whatever a spreadsheet passes over. */
    private static final Pattern FORMULA =
            Pattern.compile("(?s)[\\s\\p{Cntrl}\\p{Cf}\\p{Z}\"']*[=+\\-@＝＋－＠].*|[\\t\\r\\n].*");

    private DocumentCsv() {}

    /** The keys by which lists are asked for. */
    public static List<String> keys(Document document) {
        return grids(document).map(Part.Grid::key).distinct().toList();
    }

    /** All lists below each other: a title, a heading, the rows, an empty line. */
    public static String all(Document document) {
        List<List<String>> rows = new ArrayList<>();
        grids(document).forEach(grid -> {
            rows.add(List.of(grid.title()));
            rows.addAll(rows(grid));
            rows.add(List.of());
        });
        return BYTE_ORDER_MARK + text(rows);
    }

    /** One list: its heading and its rows; empty where there is none of that key. */
    public static Optional<String> one(Document document, String key) {
        return grids(document)
                .filter(grid -> grid.key().equals(key))
                .findFirst()
                .map(grid -> BYTE_ORDER_MARK + text(rows(grid)));
    }

    private static Stream<Part.Grid> grids(Document document) {
        return document.sections().stream()
                .flatMap(section -> section.parts().stream())
                .filter(Part.Grid.class::isInstance)
                .map(Part.Grid.class::cast);
    }

    private static List<List<String>> rows(Part.Grid grid) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(grid.columns().stream().map(Part.Column::title).toList());
        Stream.concat(grid.rows().stream(), grid.totals().stream())
                .map(row -> row.stream().map(Part.Cell::text).toList())
                .forEach(rows::add);
        return rows;
    }

    private static String text(List<List<String>> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            for (List<String> row : rows) {
                printer.printRecord(row.stream().map(DocumentCsv::harmless).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string builder has no I/O
        }
        return text.toString();
    }

    /** What a spreadsheet shows and never runs. */
    static String harmless(String cell) {
        boolean runs = FORMULA.matcher(cell).matches() && !NUMBER.matcher(cell).matches();
        return runs ? "'" + cell : cell;
    }
}
