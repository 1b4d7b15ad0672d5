package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import lungfish.edit.BadCell;
import lungfish.edit.Pasted;
import lungfish.edit.Sheet;
import lungfish.room.OutletId;
import lungfish.room.Room;

/**
 * A block with bad cells, which waits for the keeper's word: what is good of it is seen in the table, what is bad is marked.
 *
 * @param room on which it was tried
 * @param rows the outlets that its lines go into, one for each line as far as there are any
 * @param columns those that its cells go into
 */
record Waiting(Pasted pasted, Room room, Sheet block, List<OutletId> rows, List<OutletColumn> columns) {
    Waiting {
        rows = List.copyOf(rows);
        columns = List.copyOf(columns);
    }

    private Optional<OutletId> outlet(BadCell bad) {
        return bad.row() <= rows.size() ? Optional.of(rows.get(bad.row() - 1)) : Optional.empty();
    }

    /** What is wrong with the cell of an outlet, if anything is. */
    Optional<BadCell> at(OutletId outlet, OutletColumn column) {
        return pasted.bad().stream()
                .filter(bad -> bad.column().equals(column.heading())
                        && outlet(bad).filter(outlet::equals).isPresent())
                .findFirst();
    }

    /** What was to stand in a bad cell. */
    String text(BadCell bad) {
        List<String> line = bad.row() <= block.rows().size() ? block.rows().get(bad.row() - 1) : List.of();
        for (int i = 0; i < columns.size() && i < line.size(); i++) {
            if (columns.get(i).heading().equals(bad.column())) {
                return line.get(i);
            }
        }
        return "";
    }

    /** One line: its outlet, its column, what is wrong. */
    String says(BadCell bad) {
        String row = outlet(bad).map(OutletId::text).orElse("Line " + bad.row());
        return row + ", " + bad.column() + ": " + bad.complaint();
    }

    int cells() {
        return block.rows().stream().mapToInt(List::size).sum();
    }

    /** "2 of 12 cells cannot be taken." */
    String headline() {
        int many = pasted.bad().size();
        String whole = many + " of " + cells() + " cells cannot be taken. ";
        return pasted.good().isEmpty() ? whole + "Nothing was done." : whole + "The others are shown as they would be.";
    }
}
