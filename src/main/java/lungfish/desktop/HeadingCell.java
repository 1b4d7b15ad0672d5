package lungfish.desktop;

import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;

/** The heading of a column: set as the cells below it are, with a pencil where one types, and an arrow where the table is sorted by it. */
final class HeadingCell implements TableCellRenderer {
    private static final int SIDE = 6;

    private final View view;
    private final OutletColumn column;
    private final DefaultTableCellRenderer text = new DefaultTableCellRenderer();

    HeadingCell(View view, OutletColumn column, JTable table) {
        this.view = view;
        this.column = column;
        table.getTableHeader().setReorderingAllowed(false);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
        text.setText(column.heading() + arrow(table));
        text.setHorizontalAlignment(column.isFigure() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        text.setFont(view.look().type().label());
        text.setForeground(view.look().palette().softInk());
        text.setBackground(view.look().palette().sheet());
        boolean isInput = column.input(view.shown()).isPresent();
        text.setIcon(isInput ? new Pencil(view) : null);
        text.setIconTextGap(view.px(4));
        text.setToolTipText(column.help() + (isInput ? ". Typed: F2 or a double click" : ". An answer of the plan"));
        text.setOpaque(true);
        text.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(
                        0, 0, 1, 0, view.look().palette().line()),
                BorderFactory.createEmptyBorder(view.px(5), view.px(SIDE), view.px(5), view.px(SIDE))));
        return text;
    }

    private String arrow(JTable table) {
        List<? extends SortKey> keys = table.getRowSorter().getSortKeys();
        boolean isFirst = !keys.isEmpty() && OutletColumn.ALL.get(keys.get(0).getColumn()) == column;
        if (!isFirst) {
            return "";
        }
        return keys.get(0).getSortOrder() == SortOrder.ASCENDING ? " ↑" : " ↓";
    }
}
