package lungfish.desktop;

import java.awt.Component;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BadCell;
import net.miginfocom.swing.MigLayout;

/** One bad cell in a list: a cross, its place, what is wrong and how to mend it. */
final class BadCellLine extends JPanel implements ListCellRenderer<BadCell> {
    private final transient View view;
    private final Paragraph words;

    BadCellLine(View view, IntSupplier widthPx) {
        super(new MigLayout("insets " + view.px(3) + " " + view.px(6) + ", fillx", "[grow, fill]"));
        this.view = view;
        this.words = new Paragraph(view, Type::body, Palette::ink, widthPx);
        add(words, "wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends BadCell> list, BadCell bad, int index, boolean isSelected, boolean hasFocus) {
        Palette palette = view.look().palette();
        words.setText("× " + bad.sentence());
        words.setFont(view.look().type().body());
        words.setForeground(palette.accent());
        setBackground(isSelected ? palette.accentSoft() : palette.sheet());
        setBorder(BorderFactory.createLineBorder(hasFocus ? palette.air() : getBackground(), view.px(1)));
        getAccessibleContext().setAccessibleName(bad.sentence());
        return this;
    }
}
