package lungfish.desktop;

import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.quantity.Dimension;
import lungfish.reason.Origin;
import lungfish.reason.Why;
import lungfish.report.Sentences;
import net.miginfocom.swing.MigLayout;

/** One figure explained: the terms that add up to it, what went in, each with its origin, the equation and its source. */
final class WhyBlock extends JPanel {
    private static final int FIGURES = 84;
    private static final int OWN = 200;

    private final transient View view;
    private final transient Why why;
    private final int widthPx;

    WhyBlock(View view, Why why, int widthPx) {
        super(new MigLayout(
                "insets 0, fillx, wrap 2, gap " + view.px(8) + " " + view.px(3),
                "[grow, fill][" + view.px(FIGURES) + "!, right]"));
        this.view = view;
        this.why = why;
        this.widthPx = widthPx;
        setOpaque(false);
        getAccessibleContext().setAccessibleName(headline());
        head();
        terms();
        inputs();
        foot("Equation", why.equation());
        foot("Source", why.source());
    }

    private String headline() {
        return "Why " + show(why.totalSi(), why.dimension()) + "?";
    }

    private void head() {
        Line headline = new Line(view, Type::headline, Palette::ink);
        headline.setText(headline());
        add(headline, "spanx 2, growx");
        wide(Sentences.capital(why.figure()));
    }

    private void terms() {
        Sentences sentences = view.sentences();
        for (int i = 0; i < why.terms().size(); i++) {
            Why.Term term = why.terms().get(i);
            row(sentences.says(term), show(term.si(), why.termDimension(i)), term.origin());
        }
        add(new JSeparator(), "spanx 2, growx, gaptop " + view.px(2));
        String adding = why.adding() == Why.Adding.SUM ? "together" : "together, added by energy";
        add(words(Type::label, Palette::ink, adding), "growx");
        add(figure(show(why.sumSi(), why.dimension())), "top");
    }

    private void inputs() {
        if (!why.inputs().isEmpty()) {
            Line line = Line.title(view, "Went in");
            add(line, "spanx 2, gaptop " + view.px(6));
        }
        for (Why.Input input : why.inputs()) {
            row(input.name(), show(input.si(), input.dimension()), input.origin());
            own(input.si(), input.origin());
        }
    }

    /** What is assumed can be said here. */
    private void own(double si, Origin origin) {
        Paragraph trouble = new Paragraph(view, Type::body, Palette::accent, () -> widthPx);
        trouble.setVisible(false);
        origin.unsaid()
                .flatMap(key -> AssumedField.of(view, key, si, said -> {
                    trouble.setText(said);
                    trouble.setVisible(!said.isEmpty());
                }))
                .ifPresent(field -> {
                    add(field, "spanx 2, growx 0, w " + view.px(OWN) + "!, gapbottom " + view.px(4));
                    add(trouble, "spanx 2, growx 0, hidemode 3");
                });
    }

    private void row(String saying, String figure, Origin origin) {
        add(words(Type::body, Palette::ink, saying), "growx 0, alignx left");
        add(figure(figure), "top");
        add(
                words(Type::drawing, Palette::softInk, Sentences.says(origin)),
                "growx 0, alignx left, wrap, gapbottom " + view.px(2));
    }

    private void foot(String name, String text) {
        add(Line.title(view, name), "spanx 2, gaptop " + view.px(6));
        wide(text);
    }

    private void wide(String text) {
        Paragraph paragraph = new Paragraph(view, Type::body, Palette::softInk, () -> widthPx);
        paragraph.setText(text);
        add(paragraph, "spanx 2, growx 0, alignx left");
    }

    private Paragraph words(
            java.util.function.Function<Type, java.awt.Font> font,
            java.util.function.Function<Palette, java.awt.Color> ink,
            String text) {
        Paragraph paragraph = new Paragraph(view, font, ink, () -> widthPx - view.px(FIGURES + 8));
        paragraph.setText(text);
        return paragraph;
    }

    private Line figure(String text) {
        Line line = new Line(view, Type::label, Palette::ink);
        line.setText(text);
        return line;
    }

    private String show(double si, Dimension dimension) {
        return view.quantities().show(si, dimension);
    }
}
