package lungfish.edit;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
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
        return of(text, Separator.of(text));
    }

    /** Cells parted so. */
    public static Sheet of(String text, Separator separator) {
        return parsed(text, separator.sign());
    }

    /** What parts the cells of a list. */
    public enum Separator {
        COMMA(',', "commas"),
        SEMICOLON(';', "semicolons"),
        TAB('\t', "tabs");

        private final char sign;
        private final String words;

        Separator(char sign, String words) {
            this.sign = sign;
            this.words = words;
        }

        char sign() {
            return sign;
        }

        /** "commas" */
        public String words() {
            return words;
        }

        /** Whichever the first line has most of. */
        public static Separator of(String text) {
            String first = text.lines().findFirst().orElse("");
            Separator most = COMMA;
            for (Separator candidate : values()) {
                most = count(first, candidate.sign) > count(first, most.sign) ? candidate : most;
            }
            return most;
        }

        private static long count(String text, char what) {
            return text.chars().filter(c -> c == what).count();
        }
    }

    /** Without the rows above this one. */
    public Sheet from(int row) {
        return new Sheet(rows.subList(Math.min(row, rows.size()), rows.size()));
    }

    /** Only the columns that are meant. */
    public Sheet keeping(IntPredicate column) {
        return new Sheet(rows.stream()
                .map(row -> IntStream.range(0, row.size())
                        .filter(column)
                        .mapToObj(row::get)
                        .toList())
                .toList());
    }

    /** As the clipboard holds it: one line for each row. Tabs, line ends and quotes within a cell would part it: it is quoted. */
    public String tabbed() {
        return written('\t', "\n");
    }

    /** As a file of comma-separated values (RFC 4180). */
    public String commaSeparated() {
        return written(',', "\r\n");
    }

    private String written(char delimiter, String lineEnd) {
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                text.append(i == 0 ? "" : String.valueOf(delimiter)).append(quoted(row.get(i), delimiter));
            }
            text.append(lineEnd);
        }
        return text.toString();
    }

    /** A quote inside a cell is an inch, and needs none around it. */
    private static String quoted(String cell, char delimiter) {
        boolean plain = cell.chars().noneMatch(c -> c == delimiter || c == '\n' || c == '\r') && !cell.startsWith("\"");
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
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
