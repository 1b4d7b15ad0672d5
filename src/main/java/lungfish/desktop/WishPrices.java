package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.report.BuildWords;
import net.miginfocom.swing.MigLayout;

/** What is asked and what it costs, a line each; under it what would be built without it. */
final class WishPrices extends JPanel {
    private static final double COSTS_SHARE = 0.32;

    private final transient View view;
    private final transient IntSupplier widthPx;

    WishPrices(View view, IntSupplier widthPx) {
        this.view = view;
        this.widthPx = widthPx;
        setOpaque(false);
        setName("wish-prices");
    }

    void show(List<BuildWords.Line> lines) {
        removeAll();
        setLayout(new MigLayout("insets 0, fillx, wrap 2, gap 0 " + view.px(4), "[fill, grow][fill]"));
        lines.forEach(this::line);
        revalidate();
        repaint();
    }

    private void line(BuildWords.Line line) {
        add(new JSeparator(), "spanx 2, growx");
        add(text(line.wish(), Type::body, Palette::ink, () -> widthPx.getAsInt() - costsPx()), "wmin 0, aligny top");
        add(text(line.costs(), Type::label, Palette::ink, this::costsPx), "wmin 0, aligny top");
        if (!line.instead().isEmpty()) {
            add(text(line.instead(), Type::body, Palette::softInk, widthPx), "spanx 2, wmin 0");
        }
    }

    private int costsPx() {
        return (int) (COSTS_SHARE * widthPx.getAsInt());
    }

    private Paragraph text(String text, Function<Type, Font> type, Function<Palette, Color> ink, IntSupplier px) {
        Paragraph paragraph = new Paragraph(view, type, ink, px);
        paragraph.setText(text);
        return paragraph;
    }
}
