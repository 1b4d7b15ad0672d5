package lungfish.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import lungfish.document.Document;
import lungfish.document.Part;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class DocumentCsvTest {
    private static Document document(String... names) {
        Part.Grid grid = new Part.Grid(
                "parts",
                "Parts list",
                List.of(Part.Column.words("Part"), Part.Column.figures("Buy")),
                java.util.Arrays.stream(names)
                        .map(name -> List.of(new Part.Cell(name), new Part.Cell("-3")))
                        .toList(),
                Optional.empty());
        return new Document("Build sheet", "", List.of(new Document.Section("parts", "Parts", false, List.of(grid))));
    }

    private static List<CSVRecord> read(String text) {
        try (CSVParser parser = CSVFormat.RFC4180.parse(new StringReader(text.substring(1)))) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The signs of the page "CSV Injection" of OWASP (from memory), bare and after what spreadsheets pass over. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "  =1",
                "\"=1",
                "＝1",
                "＋1",
                "－1",
                "＠A",
                "\u00A0=1",
                "\u200B=1",
                "=cmd|' /C calc'!A0"
            })
    void whatWouldRunAsAFormulaBeginsWithAnApostrophe(String name) {
        String text = DocumentCsv.one(document(name), "parts").orElseThrow();
        assertThat(read(text).get(1).get(0)).isEqualTo("'" + name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-3", "+2.5", "Elbow, 90°", "Fry \"B\"", "a = b", "3/4 in", "Rack -2"})
    void whatCannotRunStaysAsItIs(String name) {
        String text = DocumentCsv.one(document(name), "parts").orElseThrow();
        assertThat(read(text).get(1).get(0)).isEqualTo(name);
    }

    @Test
    void allListsStandBelowEachOtherWithTheirTitles() {
        List<CSVRecord> rows = read(DocumentCsv.all(document("Tee")));
        assertThat(rows)
                .extracting(CSVRecord::toList)
                .startsWith(List.of("Parts list"), List.of("Part", "Buy"), List.of("Tee", "-3"));
    }

    @Test
    void aListThatIsNotThereIsNoList() {
        assertThat(DocumentCsv.one(document("Tee"), "cuts")).isEmpty();
        assertThat(DocumentCsv.keys(document("Tee"))).containsExactly("parts");
    }
}
