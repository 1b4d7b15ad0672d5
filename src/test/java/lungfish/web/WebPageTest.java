package lungfish.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import lungfish.document.Document;
import lungfish.document.Figure;
import lungfish.document.Part;
import lungfish.drawing.FigurePainter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Facts about the page, read back with the parser of the platform, which knows nothing of ours. */
final class WebPageTest {
    /** All elements that a page may have; HTML Living Standard, and SVG 1.1 for what Batik draws. */
    private static final Set<String> KNOWN = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "body",
            "header",
            "h1",
            "p",
            "nav",
            "ul",
            "li",
            "a",
            "main",
            "section",
            "h2",
            "table",
            "caption",
            "thead",
            "tbody",
            "tfoot",
            "tr",
            "th",
            "td",
            "dl",
            "dt",
            "dd",
            "ol",
            "label",
            "input",
            "span",
            "strong",
            "figure",
            "figcaption",
            "svg",
            "g",
            "defs",
            "text",
            "rect",
            "line",
            "path");

    private static final FigurePainter FIGURES = (figure, wide, high) -> Optional.of(
            new FigurePainter.Fitted(100, 50, Optional.of("1 : 50"), (area, g) -> g.drawString("drawn <b>", 10, 20)));

    static List<String> hostile() {
        return List.of(
                "<script>alert(1)</script>",
                "\"><img src=x onerror=alert(1)>",
                "Tom & Jerry &amp; co",
                "]]>",
                "<!-- -->",
                "javascript:alert(1)",
                "' onclick='alert(1)",
                "\u202Egnirts",
                "🐟 水槽",
                "x".repeat(10_000));
    }

    private static Document document(String name) {
        Part.Grid grid = new Part.Grid(
                "parts",
                name,
                List.of(Part.Column.words(name)),
                List.of(List.of(new Part.Cell(name))),
                Optional.of(List.of(new Part.Cell(name))));
        Part.Step step = new Part.Step("bleed", name, name, name, Optional.of(name));
        return new Document(
                name,
                name,
                List.of(new Document.Section(
                        "parts",
                        name,
                        true,
                        List.of(
                                new Part.Paragraph(name),
                                new Part.Caution(name),
                                new Part.Facts(List.of(new Part.Fact(name, name))),
                                grid,
                                new Part.Checklist(List.of(step)),
                                new Part.Picture(new Figure.RoomFromAbove(), name, name)))));
    }

    private static Element parsed(byte[] page) {
        try {
            String text = new String(page, StandardCharsets.UTF_8).replaceFirst("<!DOCTYPE html>\n", "");
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static List<Element> elements(Element root) {
        NodeList all = root.getElementsByTagName("*");
        List<Element> elements = new ArrayList<>(List.of(root));
        for (int i = 0; i < all.getLength(); i++) {
            elements.add((Element) all.item(i));
        }
        return elements;
    }

    private static List<String> texts(Element root, String tag) {
        return elements(root).stream()
                .filter(each -> each.getTagName().equals(tag))
                .map(Element::getTextContent)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void aNameStaysAText(String name) {
        Element root = parsed(WebPage.html(document(name), FIGURES, Optional.empty()));
        for (String tag : List.of("h1", "h2", "dt", "dd", "td", "caption", "strong", "figcaption")) {
            assertThat(texts(root, tag)).as(tag).isNotEmpty().allMatch(name::equals);
        }
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void noNameMakesAnElementOrAnAttribute(String name) {
        Element root = parsed(WebPage.html(document(name), FIGURES, Optional.empty()));
        Set<String> tags = new TreeSet<>();
        for (Element each : elements(root)) {
            tags.add(each.getTagName());
            for (int i = 0; i < each.getAttributes().getLength(); i++) {
                assertThat(each.getAttributes().item(i).getNodeName()).doesNotStartWith("on");
            }
        }
        assertThat(KNOWN).containsAll(tags);
    }

    @Test
    void whatNoPageMayHoldIsShownAsUnknown() {
        Element root = parsed(WebPage.html(document("a\u0000b\u0007c\uFFFEd"), FIGURES, Optional.empty()));
        assertThat(texts(root, "h1")).containsExactly("a\uFFFDb\uFFFDc\uFFFDd");
    }

    @Test
    void nothingIsFetchedAndNothingRuns() {
        String text = new String(WebPage.html(document("Garage"), FIGURES, Optional.empty()), StandardCharsets.UTF_8);
        assertThat(text)
                .contains("default-src 'none'")
                .doesNotContain("<script")
                .doesNotContain("@import");
        assertThat(text.replace("http://www.w3.org/", ""))
                .doesNotContain("http:")
                .doesNotContain("https:");
        assertThat(text).doesNotContain("url(");
    }

    @Test
    void theFigureIsDrawnInsideThePage() {
        Element root = parsed(WebPage.html(document("Garage"), FIGURES, Optional.empty()));
        assertThat(texts(root, "text")).contains("drawn <b>");
    }

    @Test
    void theSamePageHasTheSameBytes() {
        assertThat(WebPage.html(document("Garage"), FIGURES, Optional.empty()))
                .isEqualTo(WebPage.html(document("Garage"), FIGURES, Optional.empty()));
    }
}
