package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.table.AbstractTableModel;
import lungfish.edit.BadCell;
import lungfish.edit.TankDraft;
import lungfish.edit.TankList;
import lungfish.edit.TankProperty;

/** The rows of a list of tanks as they stand in the file; before them their numbers there. */
final class TankListModel extends AbstractTableModel {
    private final transient Consumer<UnaryOperator<TankDraft>> change;
    private transient Optional<TankDraft> draft = Optional.empty();
    private transient List<BadCell> bad = List.of();

    TankListModel(Consumer<UnaryOperator<TankDraft>> change) {
        this.change = change;
    }

    /** Whether other columns are shown than before. */
    boolean show(TankDraft that, List<BadCell> badCells) {
        boolean areOthers = draft.filter(
                        before -> before.list().headings().equals(that.list().headings()))
                .isEmpty();
        boolean isAsLong = !areOthers && rows().size() == that.list().rows().size();
        draft = Optional.of(that);
        bad = badCells;
        if (areOthers) {
            fireTableStructureChanged();
        } else if (isAsLong) {
            fireTableRowsUpdated(0, rows().size() - 1);
        } else {
            fireTableDataChanged();
        }
        return areOthers;
    }

    private List<TankList.Row> rows() {
        return draft.map(known -> known.list().rows()).orElse(List.of());
    }

    private List<String> headings() {
        return draft.map(known -> known.list().headings()).orElse(List.of());
    }

    /** What a column means; empty where it is left out. */
    Optional<TankProperty> meaning(int column) {
        return draft.flatMap(known -> Optional.ofNullable(known.meaning().get(column - 1)));
    }

    void mean(int column, Optional<TankProperty> property) {
        change.accept(known -> known.meaning(column - 1, property));
    }

    /** What is wrong with a cell; of the number of a row, what is wrong with the row and stands in none of its cells. */
    Optional<BadCell> badAt(int row, int column) {
        int number = rows().get(row).number();
        return bad.stream()
                .filter(cell -> cell.row() == number && columnOf(cell) == column)
                .findFirst();
    }

    boolean isBad(int row) {
        int number = rows().get(row).number();
        return bad.stream().anyMatch(cell -> cell.row() == number);
    }

    /** Where it stands; 0 where no column of the list is to blame. */
    int columnOf(BadCell cell) {
        return headings().indexOf(cell.column()) + 1;
    }

    int rowOf(BadCell cell) {
        return rows().stream().map(TankList.Row::number).toList().indexOf(cell.row());
    }

    @Override
    public int getRowCount() {
        return rows().size();
    }

    @Override
    public int getColumnCount() {
        return headings().isEmpty() ? 0 : headings().size() + 1;
    }

    @Override
    public String getColumnName(int column) {
        return column == 0 ? "Row" : headings().get(column - 1);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return column > 0;
    }

    @Override
    public String getValueAt(int row, int column) {
        TankList.Row line = rows().get(row);
        return column == 0 ? String.valueOf(line.number()) : line.cell(column - 1);
    }

    @Override
    public void setValueAt(Object text, int row, int column) {
        int number = rows().get(row).number();
        if (!getValueAt(row, column).equals(text)) {
            change.accept(known ->
                    known.mended(number, column - 1, String.valueOf(text).strip()));
        }
    }
}
