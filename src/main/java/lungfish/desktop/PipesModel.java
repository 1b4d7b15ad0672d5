package lungfish.desktop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;
import lungfish.choice.PipeLayout;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;
import lungfish.report.PipeWords;
import org.jspecify.annotations.Nullable;

/** The variants of a pipe as a table: a row for each size, a column for each layout, the sizes in the first. */
final class PipesModel extends AbstractTableModel {
    private final transient List<PipeLayout> layouts = new ArrayList<>();
    private final List<String> sizes = new ArrayList<>();
    private transient @Nullable PipeStudy study;

    /** Shows another study, or none. Says whether columns have changed. */
    boolean show(Optional<PipeStudy> that) {
        List<PipeLayout> before = List.copyOf(layouts);
        study = that.orElse(null);
        layouts.clear();
        sizes.clear();
        that.ifPresent(each -> {
            layouts.addAll(each.layouts());
            sizes.addAll(new LinkedHashSet<>(each.layouts().stream()
                    .flatMap(layout -> each.with(layout).stream())
                    .map(result -> PipeWords.size(result.variant()))
                    .toList()));
        });
        boolean isOther = !before.equals(layouts);
        if (isOther) {
            fireTableStructureChanged();
        } else {
            fireTableDataChanged();
        }
        return isOther;
    }

    PipeLayout layout(int column) {
        return layouts.get(column - 1);
    }

    /** The variant in a cell. */
    Optional<PipeResult> result(int row, int column) {
        PipeStudy now = study;
        return now == null || column < 1 || row < 0
                ? Optional.empty()
                : now.with(layout(column)).stream()
                        .filter(each -> PipeWords.size(each.variant()).equals(sizes.get(row)))
                        .findFirst();
    }

    boolean isDrawn(int row) {
        return result(row, 1).filter(each -> each.variant().asDrawn()).isPresent();
    }

    @Override
    public int getRowCount() {
        return sizes.size();
    }

    @Override
    public int getColumnCount() {
        return layouts.isEmpty() ? 0 : layouts.size() + 1;
    }

    @Override
    public String getColumnName(int column) {
        return column == 0 ? "Size" : PipeWords.layout(layout(column));
    }

    @Override
    public Object getValueAt(int row, int column) {
        return column == 0 ? sizes.get(row) : result(row, column);
    }
}
