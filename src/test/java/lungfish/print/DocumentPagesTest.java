package lungfish.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.document.Document;
import lungfish.document.Part;
import lungfish.drawing.FigurePainter;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Facts about how a document breaks into pages, read back from the PDF. */
final class DocumentPagesTest {
    private static final FigurePainter NO_FIGURES = (figure, wide, high) -> Optional.empty();

    private static Document document(Part... parts) {
        return new Document(
                "Title", "Subtitle", List.of(new Document.Section("one", "Section", false, List.of(parts))));
    }

    private static Part.Grid grid(int rows) {
        return new Part.Grid(
                "rows",
                "The list",
                List.of(Part.Column.words("Heading"), Part.Column.figures("Buy")),
                IntStream.range(0, rows)
                        .mapToObj(i -> List.of(new Part.Cell("row " + i + " ends"), new Part.Cell("" + i)))
                        .toList(),
                Optional.of(List.of(new Part.Cell("Total"), new Part.Cell("9"))));
    }

    private static List<String> pages(Document document) {
        byte[] bytes = PdfFile.bytes(DocumentPages.of(document, NO_FIGURES, Paper.A4, Optional.empty()));
        List<String> pages = new ArrayList<>();
        try (PDDocument read = Loader.loadPDF(bytes)) {
            for (int page = 1; page <= read.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(read));
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return pages;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 38, 39, 40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50, 51, 52, 120})
    void everyRowIsPrintedOnceUnderItsHeadingAndTotalsAreNotAlone(int rows) {
        List<String> pages = pages(document(grid(rows)));
        String all = String.join("\n", pages);
        for (int i = 0; i < rows; i++) {
            assertThat(all).containsOnlyOnce("row " + i + " ends");
        }
        for (String page : pages) {
            assertThat(page.contains("ends")).as(page).isEqualTo(page.contains("Heading"));
        }
        assertThat(pages.get(pages.size() - 1)).contains("Total").contains("ends");
    }

    @ParameterizedTest
    @ValueSource(ints = {30, 40, 44, 46, 48, 49, 50, 51, 52, 53, 54, 55, 56, 58})
    void aTitleIsNeverTheLastOfItsPage(int paragraphs) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < paragraphs; i++) {
            parts.add(new Part.Paragraph("A paragraph."));
        }
        parts.add(grid(6));
        for (String page : pages(document(parts.toArray(Part[]::new)))) {
            assertThat(page.contains("The list")).isEqualTo(page.contains("row 0 ends"));
        }
    }

    @Test
    void nothingOfALongCellIsLeftOut() {
        String name = IntStream.range(0, 120)
                .mapToObj(i -> "word" + i)
                .reduce((a, b) -> a + " " + b)
                .orElseThrow();
        Part.Grid grid = new Part.Grid(
                "rows",
                "",
                List.of(Part.Column.words("Name")),
                List.of(List.of(new Part.Cell(name))),
                Optional.empty());
        String all = String.join(" ", pages(document(grid))).replaceAll("\\s+", " ");
        assertThat(all).contains(name);
    }
}
