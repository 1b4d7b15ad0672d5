package lungfish.edit;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A text of rows and cells, as a spreadsheet gives it. Quoted cells may hold the delimiter, line ends, and doubled quotes;
 * a quote inside a plain cell is an inch.
 *
 * @param rows each with its own number of cells, without blanks around them; wholly empty rows are kept
 */
public record Sheet(List<List<String>> rows) {
    public Sheet {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** Cells parted by tabs, as the clipboard holds them. */
    public static Sheet ofTabs(String text) {
        return parsed(text, '\t');
    }

    /** Cells parted by commas, semicolons or tabs: whichever the first line has most of. */
    public static Sheet ofList(String text) {
        String first = text.lines().findFirst().orElse("");
        char delimiter = ',';
        for (char candidate : new char[] {';', '\t'}) {
            delimiter = count(first, candidate) > count(first, delimiter) ? candidate : delimiter;
        }
        return parsed(text, delimiter);
    }

    private static long count(String text, char what) {
        return text.chars().filter(c -> c == what).count();
    }

    private static Sheet parsed(String text, char delimiter) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text; // some spreadsheets mark UTF-8 so
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(false)
                .setLenientEof(true)
                .setTrailingData(true)
                .get();
        try (CSVParser parser = format.parse(new StringReader(plain))) {
            List<List<String>> rows = new ArrayList<>();
            for (CSVRecord record : parser) {
                rows.add(record.stream().map(String::strip).toList());
            }
            return new Sheet(rows);
        } catch (IOException | UncheckedIOException e) {
            throw new IllegalStateException("a text cannot fail to be read", e);
        }
    }
}
