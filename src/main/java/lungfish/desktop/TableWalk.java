package lungfish.desktop;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Where the keys go in the outlets table after a cell was typed into. */
final class TableWalk {
    private final OutletsTable table;

    TableWalk(OutletsTable table) {
        this.table = table;
    }

    /** So many rows down; among those that are chosen, where several are, and round. */
    void down(int by) {
        int[] chosen = table.getSelectedRows();
        if (chosen.length > 1) {
            int at = Arrays.binarySearch(chosen, table.leadRow());
            to(chosen[Math.floorMod(at + by, chosen.length)], table.leadColumn(), true);
        } else {
            to(Math.max(0, Math.min(table.getRowCount() - 1, table.leadRow() + by)), table.leadColumn(), false);
        }
    }

    /** To the next input in this direction, at the end of a row in the next one. Whether there is one. */
    boolean toInput(int by) {
        int wide = table.getColumnCount();
        int from = table.leadRow() * wide + table.leadColumn();
        int all = table.getRowCount() * wide;
        int at = IntStream.iterate(from + by, cell -> cell >= 0 && cell < all, cell -> cell + by)
                .filter(cell -> table.input(cell % wide).isPresent())
                .findFirst()
                .orElse(-1);
        if (at >= 0) {
            boolean isChosen = table.isRowSelected(at / wide) && table.getSelectedRowCount() > 1;
            to(at / wide, at % wide, isChosen);
        }
        return at >= 0;
    }

    private void to(int row, int column, boolean staysChosen) {
        if (staysChosen) {
            table.getSelectionModel().addSelectionInterval(row, row);
            table.getColumnModel().getSelectionModel().setSelectionInterval(column, column);
            table.scrollRectToVisible(table.getCellRect(row, column, true));
        } else {
            table.changeSelection(row, column, false, false);
        }
    }
}
