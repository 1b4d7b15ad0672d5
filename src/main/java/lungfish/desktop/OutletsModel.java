package lungfish.desktop;

import java.util.List;
import javax.swing.table.AbstractTableModel;
import lungfish.drawing.Shown;
import lungfish.plan.Plan;

/** The outlets of a plan as rows of a table. Cells are the rows themselves: columns say and sort them. */
final class OutletsModel extends AbstractTableModel {
    private transient List<OutletRow> rows = List.of();

    void show(Plan plan, Shown shown) {
        List<OutletRow> now = plan.outlets().stream()
                .map(outlet -> new OutletRow(outlet, shown))
                .toList();
        boolean isSameSize = now.size() == rows.size();
        rows = now;
        if (isSameSize && !rows.isEmpty()) {
            fireTableRowsUpdated(0, rows.size() - 1); // keeps what is selected
        } else {
            fireTableDataChanged();
        }
    }

    void showNothing() {
        rows = List.of();
        fireTableDataChanged();
    }

    OutletRow row(int index) {
        return rows.get(index);
    }

    @Override
    public int getRowCount() {
        return rows.size();
    }

    @Override
    public int getColumnCount() {
        return OutletColumn.ALL.size();
    }

    @Override
    public String getColumnName(int column) {
        return OutletColumn.ALL.get(column).heading();
    }

    @Override
    public Class<?> getColumnClass(int column) {
        return OutletRow.class;
    }

    @Override
    public OutletRow getValueAt(int row, int column) {
        return rows.get(row);
    }
}
