package lungfish.desktop;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import lungfish.drawing.OutletState;
import lungfish.drawing.Palette;
import lungfish.drawing.StateMark;

/** One cell of the outlets table: figures to the right, the state as its shape and its word. */
final class OutletCell extends DefaultTableCellRenderer {
    private static final int SIDE = 6;

    private final transient View view;
    private final OutletColumn column;

    OutletCell(View view, OutletColumn column) {
        this.view = view;
        this.column = column;
        setHorizontalAlignment(column.isFigure() ? SwingConstants.TRAILING : SwingConstants.LEADING);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
        OutletRow outlet = (OutletRow) value;
        String says = column.says(outlet, view.quantities());
        super.getTableCellRendererComponent(table, says, isSelected, hasFocus, row, at);
        setBorder(BorderFactory.createEmptyBorder(0, view.px(SIDE), 0, view.px(SIDE)));
        boolean isMark = column == OutletColumn.STATE;
        setIcon(isMark ? new Mark(outlet.state()) : null);
        setIconTextGap(view.px(SIDE));
        boolean isName = column == OutletColumn.OUTLET;
        setFont(isName ? view.look().type().label() : view.look().type().body());
        Palette palette = view.look().palette();
        setForeground(
                view.desk().isCurrent()
                        ? isName || column.isFigure() ? palette.ink() : palette.softInk()
                        : palette.free());
        setToolTipText(says);
        return this;
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
