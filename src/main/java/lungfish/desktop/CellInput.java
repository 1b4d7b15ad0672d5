package lungfish.desktop;

import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.util.EventObject;
import java.util.Optional;
import javax.swing.AbstractCellEditor;
import javax.swing.JTable;
import javax.swing.table.TableCellEditor;
import lungfish.edit.Column;
import lungfish.room.OutletId;
import org.jspecify.annotations.Nullable;

/**
 * Types into a cell of the outlets table. Enter takes it and goes down, Tab takes it and goes on to the right, Ctrl+Enter gives
 * it to all rows that are chosen, Escape gives back what was there. What cannot be taken stays to be mended, and is explained
 * below the cell.
 */
final class CellInput extends AbstractCellEditor implements TableCellEditor {
    private static final int TO_BEGIN = 2;

    private final transient View view;
    private final OutletsTable table;
    private final transient TableEdits edits;
    private final CellTrouble trouble;
    private transient @Nullable Typing typing;

    /** What is being typed, and into which cell. */
    private record Typing(CellField field, OutletId outlet, Column column, String before) {
        boolean isChanged() {
            return !field.text().equals(before);
        }
    }

    CellInput(View view, OutletsTable table, TableEdits edits) {
        this.view = view;
        this.table = table;
        this.edits = edits;
        this.trouble = new CellTrouble(view, table);
    }

    @Override
    public boolean isCellEditable(EventObject event) {
        return !(event instanceof MouseEvent mouse) || mouse.getClickCount() >= TO_BEGIN;
    }

    @Override
    public Object getCellEditorValue() {
        return ""; // a room is changed by edits, not by its table
    }

    /** Begins in the cell that the keys are at: with what stands there, or with the first letter of something else. */
    void begin(Optional<Character> letter) {
        int row = table.leadRow();
        int column = table.leadColumn();
        if (row < 0 || column < 0) {
            return;
        }
        if (table.input(column).isEmpty()) {
            edits.say(table.column(column).heading() + " is an answer of the plan, not typed. Enter: why it is so.");
        } else if (table.editCellAt(row, column)) {
            field().ifPresent(field -> field.begin(letter));
        }
    }

    /** What one types into now. */
    Optional<CellField> field() {
        return Optional.ofNullable(typing).map(Typing::field);
    }

    @Override
    public Component getTableCellEditorComponent(JTable of, Object value, boolean isSelected, int row, int at) {
        OutletRow outlet = (OutletRow) value;
        OutletColumn shown = table.column(at);
        Column column = table.input(at).orElseThrow();
        String before = column.show(outlet.seat(), view.reader());
        CellField field = new CellField(view, column.choices(view.reader()), before);
        field.setName("cell");
        field.getAccessibleContext().setAccessibleName(shown.heading() + " of " + outlet.id());
        if (before.isEmpty()) {
            field.putClientProperty("JTextField.placeholderText", shown.says(outlet, view.reader()));
        }
        field.setHorizontalAlignment(shown.isFigure() ? CellField.TRAILING : CellField.LEADING);
        CellKeys.bind(field, this);
        field.addFocusListener(new Left());
        typing = new Typing(field, outlet.id(), column, before);
        tellTrouble("");
        edits.say("");
        return field;
    }

    /** Takes what was typed, if it can be; else it stays. */
    @Override
    public boolean stopCellEditing() {
        return stop(
                typing == null || !typing.isChanged()
                        ? ""
                        : edits.set(typing.outlet, typing.column, typing.field.text()));
    }

    /** The same for all rows that are chosen. */
    boolean stopInAll() {
        return stop(typing == null ? "" : edits.setChosen(typing.column, typing.field.text()));
    }

    private boolean stop(String said) {
        tellTrouble(said);
        if (!said.isEmpty()) {
            return false;
        }
        typing = null;
        return super.stopCellEditing();
    }

    @Override
    public void cancelCellEditing() {
        tellTrouble("");
        typing = null;
        super.cancelCellEditing();
        edits.leave();
    }

    private void tellTrouble(String said) {
        if (typing != null) {
            typing.field.mark(!said.isEmpty());
            typing.field.getAccessibleContext().setAccessibleDescription(said);
        }
        trouble.tell(
                said,
                table.isEditing()
                        ? table.getCellRect(table.getEditingRow(), table.getEditingColumn(), true)
                        : table.getBounds());
    }

    /** What is wrong with what was typed; empty when nothing is. */
    String trouble() {
        return trouble.said();
    }

    /** Takes it, and goes on so many rows: among those that are chosen, where several are. */
    void goDown(int by) {
        if (stopCellEditing()) {
            table.walk().down(by);
        }
    }

    /** Takes it, and goes on to the next input in this direction, to be typed into. */
    void goOn(int by) {
        if (stopCellEditing() && table.walk().toInput(by)) {
            begin(Optional.empty());
        }
    }

    /** Leaving the field takes what was typed; what cannot be taken waits there to be mended. */
    private final class Left extends FocusAdapter {
        @Override
        public void focusLost(FocusEvent event) {
            if (!event.isTemporary()
                    && table.isEditing()
                    && field().filter(event.getSource()::equals).isPresent()) {
                stopCellEditing();
            }
        }
    }
}
