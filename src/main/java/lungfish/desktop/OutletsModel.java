package lungfish.desktop;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import lungfish.drawing.Shown;
import lungfish.plan.OutletPlan;
import lungfish.plan.Plan;
import lungfish.room.OutletId;
import lungfish.room.Room;

/** The outlets of a room as rows of a table, with what the newest plan says of them. Cells are the rows themselves. */
final class OutletsModel extends AbstractTableModel {
    private transient List<OutletRow> rows = List.of();

    void show(Room room, Optional<Plan> plan, Shown shown) {
        Map<OutletId, OutletPlan> known = new HashMap<>();
        plan.ifPresent(newest ->
                newest.outlets().forEach(outlet -> known.put(outlet.need().id(), outlet)));
        List<OutletRow> now = room.seats().stream()
                .map(seat -> new OutletRow(
                        seat, Optional.ofNullable(known.get(seat.outlet().id())), shown))
                .toList();
        boolean areTheSame = ids(now).equals(ids(rows));
        rows = now;
        if (areTheSame && !rows.isEmpty()) {
            fireTableRowsUpdated(0, rows.size() - 1); // keeps what is selected and what is edited
        } else {
            fireTableDataChanged();
        }
    }

    private static List<OutletId> ids(List<OutletRow> rows) {
        return rows.stream().map(OutletRow::id).toList();
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
    public boolean isCellEditable(int row, int column) {
        return OutletColumn.ALL.get(column).input(rows.get(row).shown()).isPresent();
    }

    @Override
    public OutletRow getValueAt(int row, int column) {
        return rows.get(row);
    }
}
