package lungfish.desktop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lungfish.edit.Attempt;
import lungfish.edit.BadCell;
import lungfish.edit.Block;
import lungfish.edit.Clip;
import lungfish.edit.Column;
import lungfish.edit.Pasted;
import lungfish.edit.Sheet;
import lungfish.room.OutletId;

/** What is typed, filled and pasted into the outlets table. A block with bad cells waits for the keeper's word. */
final class TableEdits {
    private final View view;
    private final OutletsTable table;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<Waiting> waiting = Optional.empty();
    private String said = "";

    TableEdits(View view, OutletsTable table) {
        this.view = view;
        this.table = table;
    }

    /** Heard when there is something else to say beside the table. */
    void onTell(Runnable listener) {
        listeners.add(listener);
    }

    void tell() {
        listeners.forEach(Runnable::run);
    }

    /** Says it beside the table, until something else is done. */
    void say(String that) {
        said = that;
        tell();
        table.repaint();
    }

    /** Why something could not be done; empty when all is well. */
    String said() {
        return said;
    }

    Optional<Waiting> waiting() {
        return waiting;
    }

    /** What is wrong with what waits to stand in a cell. */
    Optional<BadCell> badAt(OutletRow row, OutletColumn column) {
        return waiting.flatMap(block -> block.at(row.id(), column));
    }

    /** What was to stand in a bad cell. */
    String textOf(BadCell bad) {
        return waiting.map(block -> block.text(bad)).orElse("");
    }

    /** Types into one cell. What is wrong with it; empty when it was taken. */
    String set(OutletId outlet, Column column, String text) {
        return set(List.of(outlet), column, text);
    }

    /** Types the same into a column of all rows that are chosen. */
    String setChosen(Column column, String text) {
        return set(chosenRows(), column, text);
    }

    private String set(List<OutletId> rows, Column column, String text) {
        Pasted pasted = Block.set(view.desk().room(), rows, column, text, view.reader());
        if (pasted.bad().isEmpty()) {
            take(pasted);
            return "";
        }
        if (rows.size() > 1 && pasted.good().isPresent()) {
            List<OutletColumn> one = OutletColumn.ALL.stream()
                    .filter(each -> each.heading().equals(column.heading()))
                    .toList();
            Sheet block = new Sheet(rows.stream().map(row -> List.of(text)).toList());
            await(new Waiting(pasted, view.desk().room(), block, rows, one));
        }
        return pasted.bad().get(0).complaint();
    }

    private void take(Pasted pasted) {
        waiting = Optional.empty();
        pasted.whole().ifPresent(view.desk()::apply);
        say("");
    }

    private void await(Waiting block) {
        view.desk().leave();
        waiting = Optional.of(block);
        block.pasted().good().ifPresent(view.desk()::tryOut);
        say("");
    }

    /** Says nothing any more in the chosen cells: the plan then takes what is usual. */
    void clear() {
        List<Column> columns = inputs(chosenInputs());
        if (columns.size() == 1) {
            String trouble = set(chosenRows(), columns.get(0), "");
            if (!trouble.isEmpty() && waiting.isEmpty()) {
                say(trouble);
            }
        } else {
            List<String> nothing = columns.stream().map(column -> "").toList();
            paste(new Sheet(chosenRows().stream().map(row -> nothing).toList()), chosenRows(), chosenInputs());
        }
    }

    private List<OutletId> chosenRows() {
        return table.ids(Arrays.stream(table.getSelectedRows()));
    }

    private boolean areRowsWhole() {
        return table.getSelectedColumnCount() == table.getColumnCount();
    }

    /** Those of the chosen block; of whole rows, the one that the keys are at. */
    private List<OutletColumn> chosenInputs() {
        IntStream columns = areRowsWhole()
                ? IntStream.of(table.leadColumn()).filter(column -> column >= 0)
                : Arrays.stream(table.getSelectedColumns());
        return columns.filter(column -> table.input(column).isPresent())
                .mapToObj(table::column)
                .toList();
    }

    private List<Column> inputs(List<OutletColumn> columns) {
        return columns.stream()
                .flatMap(column -> column.input(view.shown()).stream())
                .toList();
    }

    /** Gives the chosen rows what the first of them has. */
    void fillDown() {
        if (chosenInputs().isEmpty()) {
            say("Choose cells of a column that is typed into: answers of the plan cannot be filled.");
            return;
        }
        Attempt attempt = Block.fillDown(view.desk().room(), chosenRows(), inputs(chosenInputs()));
        attempt.edit().ifPresent(view.desk()::apply);
        say(attempt.refused()
                .map(refused -> refused.sentence(view.quantities()))
                .orElse(""));
    }

    /** Puts the chosen block onto the clipboard, as a spreadsheet takes it; the outlets themselves can be pasted in the room. */
    void copy(boolean headings) {
        if (table.leadRow() < 0) {
            say("Choose the cells to copy first.");
            return;
        }
        List<OutletColumn> columns = Arrays.stream(table.getSelectedColumns())
                .mapToObj(table::column)
                .toList();
        IntStream rows = Arrays.stream(table.getSelectedRows());
        TextClip.put(OutletsBlock.of(rows.mapToObj(table::outlet).toList(), columns, headings, view.reader())
                .tabbed());
        view.copied(Clip.of(view.desk().room(), view.selection()));
        say("");
    }

    /** Puts what is on the clipboard into the table, from the first chosen cell on. */
    void paste() {
        Sheet sheet = Sheet.ofTabs(TextClip.text());
        if (sheet.rows().isEmpty()) {
            say("There is no text on the clipboard.");
        } else if (table.leadRow() < 0 && !OutletsBlock.isHeaded(sheet)) {
            say("Choose the cell where the block begins first.");
        } else {
            int row = table.leadRow() < 0 ? 0 : table.getSelectedRows()[0];
            int column = table.leadRow() < 0 ? 0 : table.getSelectedColumns()[0];
            OutletsBlock block = OutletsBlock.read(
                    sheet,
                    table.ids(IntStream.range(row, table.getRowCount())),
                    IntStream.range(column, table.getColumnCount())
                            .mapToObj(table::column)
                            .toList(),
                    view.shown());
            boolean isOneCell = block.cells().rows().size() == 1
                    && block.cells().rows().get(0).size() == 1;
            if (isOneCell && chosenRows().size() > 1 && !block.columns().isEmpty()) {
                inputs(block.columns()).stream()
                        .limit(1)
                        .forEach(each ->
                                setChosen(each, block.cells().rows().get(0).get(0)));
            } else {
                paste(block.cells(), block.rows(), block.columns());
            }
        }
    }

    private void paste(Sheet cells, List<OutletId> rows, List<OutletColumn> columns) {
        if (columns.isEmpty()) {
            say("These are answers of the plan: choose a cell that is typed into.");
            return;
        }
        Pasted pasted = Block.in(view.desk().room(), cells, rows, inputs(columns), view.reader());
        if (pasted.bad().isEmpty()) {
            take(pasted);
        } else {
            await(new Waiting(pasted, view.desk().room(), cells, rows, columns));
        }
    }

    /** Does what is good of the block that waits. */
    void takeGood() {
        Optional<Waiting> block = waiting;
        waiting = Optional.empty();
        block.flatMap(each -> each.pasted().good()).ifPresent(view.desk()::apply);
        say("");
    }

    /** Lets go of the block that waits; nothing is done. */
    void leave() {
        waiting = Optional.empty();
        view.desk().leave();
        say("");
    }

    /** Another edit, or another room, ends what waits. */
    void forgetWhatIsOver() {
        boolean isOver = waiting.filter(block -> !block.room()
                                .equals(view.desk().room())
                        || (block.pasted().good().isPresent() && !view.desk().isTrying()))
                .isPresent();
        if (isOver) {
            waiting = Optional.empty();
            say("");
        }
    }
}
