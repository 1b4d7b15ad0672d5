package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** Names with two figures beside each, in columns; where it is narrow the names stand over their figures. */
final class FiguresGrid extends JPanel {
    private static final int GAP = 16;
    private static final int NARROW = 440;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final boolean isCurrent;
    private final boolean isNarrow;

    /**
     * Nothing yet.
     *
     * @param isCurrent whether the figures are those of the room as it is now: older ones are soft
     */
    FiguresGrid(View view, IntSupplier widthPx, boolean isCurrent) {
        this.view = view;
        this.isCurrent = isCurrent;
        this.widthPx = widthPx;
        this.isNarrow = widthPx.getAsInt() < view.px(NARROW);
        setOpaque(false);
        setLayout(new MigLayout(
                "insets 0, fillx, wrap " + (isNarrow ? 2 : 3) + ", gap " + view.px(GAP) + " " + view.px(4),
                "[fill]".repeat(isNarrow ? 2 : 3)));
    }

    private int namePx() {
        return isNarrow ? widthPx.getAsInt() : widthPx.getAsInt() - 2 * (figurePx() + view.px(GAP));
    }

    private int figurePx() {
        return isNarrow ? (widthPx.getAsInt() - view.px(GAP)) / 2 : (int) (0.3 * widthPx.getAsInt());
    }

    void heads(String first, String second) {
        if (!isNarrow) {
            add(cell("", Type::label, Palette::softInk, this::namePx));
        }
        add(cell(first, Type::label, Palette::softInk, this::figurePx));
        add(cell(second, Type::label, Palette::softInk, this::figurePx));
    }

    void row(String name, String first, String second) {
        add(new JSeparator(), "spanx, growx");
        add(cell(name, Type::body, Palette::softInk, this::namePx), isNarrow ? "spanx 2" : "");
        add(cell(first, Type::body, Palette::ink, this::figurePx)).setName(name + ", today");
        add(cell(second, Type::body, Palette::ink, this::figurePx)).setName(name + ", planned");
    }

    private Paragraph cell(String text, Function<Type, Font> type, Function<Palette, Color> ink, IntSupplier px) {
        Paragraph cell = new Paragraph(view, type, isCurrent ? ink : Palette::free, px);
        cell.setText(text);
        return cell;
    }

    private Paragraph add(Paragraph cell) {
        add(cell, "growx, wmin 0, aligny top");
        return cell;
    }
}
