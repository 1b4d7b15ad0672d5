package lungfish.desktop;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** Says below a cell what is wrong with what was typed into it. It lies over the window, so that it never hides the cell. */
final class CellTrouble extends JPanel {
    private static final int WIDTH = 320;
    private static final int LEAST = 120;

    private final transient View view;
    private final JTable table;
    private final Paragraph words;
    private int widthPx;

    CellTrouble(View view, JTable table) {
        super(new MigLayout("insets " + view.px(6) + " " + view.px(8) + ", fill", "[grow, fill]"));
        this.view = view;
        this.table = table;
        this.words = new Paragraph(view, Type::body, Palette::accent, () -> Math.max(1, widthPx - 2 * view.px(9)));
        words.setName("cell-trouble");
        add(words);
        setVisible(false);
        table.addHierarchyListener(event -> setVisible(table.isShowing() && !said().isEmpty()));
    }

    /** Says it below this cell; above it where there is no room below. Nothing: says nothing. */
    void tell(String said, Rectangle cell) {
        words.setText(said);
        setVisible(!said.isEmpty());
        Container before = getParent();
        if (before != null) {
            before.remove(this);
            before.repaint();
        }
        if (!said.isEmpty()) {
            JComponent over = over();
            over.add(this, JLayeredPane.POPUP_LAYER, 0);
            dress();
            place(SwingUtilities.convertRectangle(table, cell, over), over);
            over.repaint();
        }
    }

    /** Over the whole window, as a short table has no room for it; over the table where there is no window. */
    private JComponent over() {
        JRootPane root = table.getRootPane();
        return root == null ? table : root.getLayeredPane();
    }

    String said() {
        return words.getText();
    }

    private void dress() {
        Palette palette = view.look().palette();
        setBackground(palette.sheet());
        setBorder(BorderFactory.createLineBorder(palette.accent(), view.px(1)));
    }

    private void place(Rectangle cell, JComponent over) {
        Rectangle seen = over.getVisibleRect();
        widthPx = Math.max(view.px(LEAST), Math.min(view.px(WIDTH), seen.width));
        Dimension size = getPreferredSize();
        int x = Math.max(seen.x, Math.min(cell.x, seen.x + seen.width - widthPx));
        boolean fitsBelow = cell.y + cell.height + size.height <= seen.y + seen.height;
        int y = fitsBelow ? cell.y + cell.height : Math.max(seen.y, cell.y - size.height);
        setBounds(x, y, widthPx, size.height);
        doLayout();
    }
}
