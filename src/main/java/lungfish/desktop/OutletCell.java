package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import lungfish.drawing.OutletState;
import lungfish.drawing.Palette;
import lungfish.drawing.StateMark;
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
        setIcon(isMark ? new Mark(outlet.state()) : null);
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

    /** The shape of a state, as on the drawing. */
    private final class Mark implements Icon {
        private static final double RADIUS = 3.2;

        private final OutletState state;

        Mark(OutletState state) {
            this.state = state;
        }

        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            double half = getIconWidth() / 2.0;
            StateMark.paint(state, x + half, y + half, view.look().type().px(RADIUS), view.look(), g);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return view.px(16);
        }

        @Override
        public int getIconHeight() {
            return view.px(16);
        }
    }
}
