package lungfish.desktop;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableColumn;
import lungfish.document.Part;

/** A list that is read, and copied from; what is cut is whole in its tooltip. */
final class PlainTable extends JTable {
    private static final int ROW = 22;
    private static final int MOST = 260;
    private static final int PAD = 14;
    /** A column that needs no more than this is never made narrower. */
    private static final int LEAST = 96;

    private final transient View view;
    private final transient Part.Grid grid;

    PlainTable(View view, Part.Grid grid) {
        super(new DefaultTableModel(
                grid.rows().stream()
                        .map(row -> row.stream().map(Part.Cell::text).toArray())
                        .toArray(Object[][]::new),
                grid.columns().stream().map(Part.Column::title).toArray()));
        this.view = view;
        this.grid = grid;
        setName("list: " + grid.key());
        getAccessibleContext().setAccessibleName(grid.title());
        setShowGrid(false);
        setOpaque(false);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getTableHeader().setReorderingAllowed(false);
        setDefaultRenderer(Object.class, new Cells());
        getTableHeader().setDefaultRenderer(new Cells());
        view.follow(this, this::dress);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return false;
    }

    /** A table in no scroll pane of its own shows no header: it stands over it. */
    Component header() {
        return getTableHeader();
    }

    private void dress() {
        setFont(view.look().type().body());
        setForeground(view.look().palette().ink());
        setBackground(view.look().palette().sheet());
        getTableHeader().setFont(view.look().type().label());
        setRowHeight(view.px(ROW));
        for (int i = 0; i < getColumnCount(); i++) {
            TableColumn column = getColumnModel().getColumn(i);
            column.setPreferredWidth(widest(i));
            column.setMinWidth(Math.min(widest(i), view.px(LEAST)));
        }
    }

    private int widest(int column) {
        var metrics = getFontMetrics(getFont());
        int heading = getTableHeader()
                .getFontMetrics(getTableHeader().getFont())
                .stringWidth(grid.columns().get(column).title());
        int cells = grid.rows().stream()
                .mapToInt(row -> metrics.stringWidth(row.get(column).text()))
                .max()
                .orElse(0);
        return Math.min(view.px(MOST), Math.max(heading, cells)) + view.px(PAD);
    }

    /** Words begin at their left, figures end at their right. */
    private final class Cells extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            JLabel label =
                    (JLabel) super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
            boolean isHeading = row < 0;
            label.setHorizontalAlignment(
                    grid.columns().get(column).isFigures() ? SwingConstants.TRAILING : SwingConstants.LEADING);
            label.setToolTipText(String.valueOf(value));
            label.setFont(
                    isHeading ? view.look().type().label() : view.look().type().body());
            if (isHeading) {
                label.setForeground(view.look().palette().softInk());
                label.setBackground(view.look().palette().sheet());
            }
            return label;
        }
    }
}
