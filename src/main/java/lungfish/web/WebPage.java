package lungfish.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import lungfish.document.Document;
import lungfish.document.Part;
import lungfish.drawing.FigurePainter;

/**
 * A document as one file for any browser: no script, nothing that is fetched, light and dark as the reader has it, and fit to be
 * printed. The same document gives the same bytes.
 */
public final class WebPage {
    /** A browser that heeds it fetches nothing and runs nothing, whatever stood in a name. */
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

    private static final double FIGURE_WIDE_PT = 640;
    private static final double FIGURE_HIGH_PT = 720;

    private final FigurePainter figures;
    private final Markup page = new Markup();
    private int figure;

    private WebPage(FigurePainter figures) {
        this.figures = figures;
    }

    /**
     * The page, in UTF-8.
     *
     * @param date at its end, as it is
     */
    public static byte[] html(Document document, FigurePainter figures, Optional<String> date) {
        String text = "<!DOCTYPE html>\n" + new WebPage(figures).written(document, date) + "\n";
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private String written(Document document, Optional<String> date) {
        page.element(
                "html",
                () -> {
                    page.element("head", () -> head(document));
                    page.element("body", () -> body(document, date));
                },
                "xmlns",
                "http://www.w3.org/1999/xhtml",
                "lang",
                "en");
        return page.text();
    }

    private void head(Document document) {
        page.empty("meta", "charset", "utf-8");
        page.empty("meta", "http-equiv", "Content-Security-Policy", "content", POLICY);
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.text("title", document.title());
        page.text("style", style());
    }

    private void body(Document document, Optional<String> date) {
        page.element("header", () -> {
            page.text("h1", document.title());
            page.text("p", document.subtitle());
        });
        page.element("nav", () -> links(document.sections()), "aria-label", "Sections");
        page.element("main", () -> document.sections().forEach(this::section));
        date.ifPresent(day -> page.element("footer", () -> page.words(day)));
    }

    private void links(List<Document.Section> sections) {
        page.element(
                "ul",
                () -> sections.forEach(section ->
                        page.element("li", () -> page.text("a", section.title(), "href", "#" + section.key()))));
    }

    private void section(Document.Section section) {
        page.line();
        page.element(
                "section",
                () -> {
                    page.text("h2", section.title());
                    section.parts().forEach(this::part);
                },
                "id",
                section.key(),
                "class",
                section.newPage() ? "new-page" : "");
    }

    private void part(Part part) {
        page.line();
        if (part instanceof Part.Paragraph paragraph) {
            page.text("p", paragraph.text());
        } else if (part instanceof Part.Caution caution) {
            page.text("p", caution.text(), "class", "caution");
        } else if (part instanceof Part.Facts facts) {
            page.element("dl", () -> facts.facts().forEach(fact -> {
                page.text("dt", fact.what());
                page.text("dd", fact.said());
            }));
        } else if (part instanceof Part.Grid grid) {
            table(grid);
        } else if (part instanceof Part.Checklist list) {
            page.element("ol", () -> list.steps().forEach(this::step), "class", "steps");
        } else if (part instanceof Part.Picture picture) {
            picture(picture);
        }
    }

    private void table(Part.Grid grid) {
        page.element(
                "table",
                () -> {
                    if (!grid.title().isEmpty()) {
                        page.text("caption", grid.title());
                    }
                    page.element(
                            "thead",
                            () -> page.element("tr", () -> grid.columns()
                                    .forEach(column ->
                                            page.text("th", column.title(), "scope", "col", "class", kind(column)))));
                    page.element("tbody", () -> grid.rows().forEach(row -> row(grid, row)));
                    grid.totals().ifPresent(row -> page.element("tfoot", () -> row(grid, row)));
                },
                "id",
                "table-" + grid.key());
    }

    private void row(Part.Grid grid, List<Part.Cell> row) {
        page.element("tr", () -> {
            for (int i = 0; i < row.size(); i++) {
                page.text("td", row.get(i).text(), "class", kind(grid.columns().get(i)));
            }
        });
    }

    private static String kind(Part.Column column) {
        return column.isFigures() ? "figures" : "words";
    }

    /** A box that can be ticked while one works; the room's own log keeps what was ticked in the window. */
    private void step(Part.Step step) {
        page.element(
                "li",
                () -> page.element("label", () -> {
                    if (step.done().isPresent()) {
                        page.empty("input", "type", "checkbox", "checked", "checked");
                    } else {
                        page.empty("input", "type", "checkbox");
                    }
                    page.element("span", () -> {
                        page.text("strong", step.action());
                        page.text("span", step.detail(), "class", "detail");
                        if (!step.expected().isEmpty()) {
                            page.text("span", step.expected(), "class", "expected");
                        }
                        step.done().ifPresent(day -> page.text("span", "done " + day, "class", "done"));
                    });
                }));
    }

    private void picture(Part.Picture picture) {
        figures.fitted(picture.figure(), FIGURE_WIDE_PT, FIGURE_HIGH_PT).ifPresent(fitted -> {
            String prefix = "f" + ++figure;
            page.element("figure", () -> {
                SvgPicture.inline(fitted, picture.described(), prefix, page);
                page.text("figcaption", picture.caption());
            });
        });
    }

    private static String style() {
        try (InputStream in = Objects.requireNonNull(WebPage.class.getResourceAsStream("page.css"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
