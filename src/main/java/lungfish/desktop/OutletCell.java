package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import lungfish.drawing.Palette;
import lungfish.edit.BadCell;
import lungfish.edit.Reader;

/**
 * One cell of the outlets table: figures to the right, the state as its shape and its word. Answers of the plan lie on the
 * colour of the desk, inputs on that of the sheet; what is assumed leans, what cannot be taken is crossed.
 */
final class OutletCell extends DefaultTableCellRenderer {
    private static final int SIDE = 6;

    private final transient View view;
    private final OutletColumn column;
    private boolean hasKeys;
    private boolean isChosen;
    private boolean isFirst;

    OutletCell(View view, OutletColumn column) {
        this.view = view;
        this.column = column;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
        OutletRow outlet = (OutletRow) value;
        Optional<BadCell> bad = ((OutletsTable) table).edits().badAt(outlet, column);
        Reader reader = view.reader();
        String says = bad.map(each -> "× " + ((OutletsTable) table).edits().textOf(each))
                .orElseGet(() -> column.says(outlet, reader));
        super.getTableCellRendererComponent(table, says, isSelected, hasFocus, row, at);
        setHorizontalAlignment(column.isFigure() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        setBorder(BorderFactory.createEmptyBorder(0, view.px(SIDE), 0, view.px(SIDE)));
        boolean isMark = column == OutletColumn.STATE;
        setIcon(isMark ? new StateIcon(view, outlet.state()) : null);
        setIconTextGap(view.px(SIDE));
        hasKeys = hasFocus;
        isChosen = table.isRowSelected(row);
        isFirst = at == 0;
        boolean isAssumed = bad.isEmpty() && column.isAssumed(outlet, reader);
        dress(outlet, isAssumed, bad.isPresent());
        setBackground(ground(isSelected, isChosen, column.input(outlet.shown()).isPresent()));
        setToolTipText(bad.map(BadCell::complaint).orElse(isAssumed ? says + ", assumed by the plan" : says));
        getAccessibleContext().setAccessibleDescription(getToolTipText());
        return this;
    }

    private void dress(OutletRow outlet, boolean isAssumed, boolean isBad) {
        boolean isName = column == OutletColumn.OUTLET;
        Font font = isName ? view.look().type().label() : view.look().type().body();
        setFont(isAssumed ? font.deriveFont(Font.ITALIC) : font);
        Palette palette = view.look().palette();
        boolean isOwn = column.input(outlet.shown()).isPresent() && !isAssumed;
        Color ink = isName || isOwn || (column.isFigure() && !isAssumed) ? palette.ink() : palette.softInk();
        boolean isOld = !isOwn && !isName && !view.desk().isCurrent();
        setForeground(isBad ? palette.accent() : isOld ? palette.free() : ink);
    }

    private Color ground(boolean isInBlock, boolean isInRow, boolean isInput) {
        Palette palette = view.look().palette();
        if (isInBlock) {
            return palette.accentSoft();
        }
        Color plain = isInput ? palette.sheet() : palette.paper();
        return isInRow ? between(palette.accentSoft(), plain) : plain;
    }

    private static Color between(Color one, Color other) {
        return new Color(
                (one.getRed() + other.getRed()) / 2,
                (one.getGreen() + other.getGreen()) / 2,
                (one.getBlue() + other.getBlue()) / 2);
    }

    /** The bar of a chosen row, and the frame of the cell that the keys are at. */
    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Palette palette = view.look().palette();
        if (isChosen && isFirst) {
            graphics.setColor(palette.accent());
            graphics.fillRect(0, 0, view.px(2), getHeight());
        }
        if (hasKeys) {
            graphics.setColor(palette.air());
            for (int i = 0; i < view.px(2); i++) {
                graphics.drawRect(i, i, getWidth() - 1 - 2 * i, getHeight() - 1 - 2 * i);
            }
        }
    }
}
