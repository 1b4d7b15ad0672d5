package lungfish.desktop;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.DefaultCellEditor;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellEditor;
import lungfish.drawing.Palette;
import lungfish.edit.BlowerDraft;
import lungfish.edit.DraftLook;

/** The points of a curve as they are typed, or pasted from a spreadsheet; a bad cell is crossed and framed. */
final class PointsTable extends JTable {
    private static final List<String> HEADS = List.of("Pressure", "Flow", "Watts, if told");
    private static final int ROW = 26;

    private final transient View view;
    private final transient Consumer<UnaryOperator<BlowerDraft>> change;
    private transient BlowerDraft draft = BlowerDraft.empty();
    private transient DraftLook look = new DraftLook(List.of(), java.util.Optional.empty(), java.util.Optional.empty());

    PointsTable(View view, Consumer<UnaryOperator<BlowerDraft>> change) {
        this.view = view;
        this.change = change;
        setModel(new Points());
        setName("points");
        getAccessibleContext().setAccessibleName("Points of its curve: pressure, flow, watts");
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setSurrendersFocusOnKeystroke(true);
        putClientProperty("terminateEditOnFocusLost", true);
        setShowGrid(true);
        setIntercellSpacing(new java.awt.Dimension(1, 1));
        getTableHeader().setReorderingAllowed(false);
        if (getTableHeader().getDefaultRenderer() instanceof JLabel heading) {
            heading.setHorizontalAlignment(JLabel.TRAILING);
        }
        setDefaultRenderer(Object.class, new Cell());
        JTextField field = new JTextField();
        field.setName("point-cell");
        field.getAccessibleContext().setAccessibleName("Cell of the curve");
        setDefaultEditor(Object.class, new DefaultCellEditor(field));
        Keys.bind(this, "ctrl V", this::paste);
        Keys.bind(this, "DELETE", () -> put(""));
    }

    void show(BlowerDraft that, DraftLook looked) {
        boolean isAsLong = draft.points().size() == that.points().size();
        draft = that;
        look = looked;
        setRowHeight(view.px(ROW));
        setFont(view.look().type().body());
        setGridColor(view.look().palette().line());
        if (!isAsLong && getModel() instanceof AbstractTableModel model) {
            int row = getSelectedRow();
            int column = getSelectedColumn();
            model.fireTableDataChanged();
            changeSelection(Math.max(0, row), Math.max(0, column), false, false);
        }
        repaint();
    }

    private void paste() {
        int row = Math.max(0, getSelectedRow());
        int column = Math.max(0, getSelectedColumn());
        change.accept(known -> known.pasted(row, column, TextClip.text()));
    }

    private void put(String text) {
        int row = getSelectedRow();
        int column = getSelectedColumn();
        if (row >= 0 && column >= 0) {
            change.accept(known -> known.with(row, column, text));
        }
    }

    /** What stands in the cell gives way to what is typed; a shortcut is no typing. */
    @Override
    public boolean editCellAt(int row, int column, java.util.EventObject event) {
        boolean isShortcut = event instanceof KeyEvent key && (key.isControlDown() || key.isMetaDown());
        return !isShortcut && super.editCellAt(row, column, event);
    }

    @Override
    public Component prepareEditor(TableCellEditor editor, int row, int column) {
        Component field = super.prepareEditor(editor, row, column);
        if (field instanceof JTextField text) {
            text.setFont(view.look().type().body());
            text.setBorder(BorderFactory.createLineBorder(view.look().palette().air(), view.px(2)));
            text.selectAll();
        }
        return field;
    }

    private final class Points extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return draft.points().size();
        }

        @Override
        public int getColumnCount() {
            return HEADS.size();
        }

        @Override
        public String getColumnName(int column) {
            return HEADS.get(column);
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return true;
        }

        @Override
        public String getValueAt(int row, int column) {
            return draft.points().get(row).get(column);
        }

        @Override
        public void setValueAt(Object text, int row, int column) {
            change.accept(known -> known.with(row, column, String.valueOf(text)));
        }
    }

    private final class Cell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            Palette palette = view.look().palette();
            String bad = look.at(row, column).map(DraftLook.Complaint::says).orElse("");
            super.getTableCellRendererComponent(
                    table, bad.isEmpty() ? value : "× " + value, isSelected, false, row, column);
            setFont(view.look().type().body());
            setForeground(bad.isEmpty() ? palette.ink() : palette.accent());
            setBackground(isSelected || !bad.isEmpty() ? palette.accentSoft() : palette.sheet());
            int frame = view.px(hasFocus ? 2 : 1);
            java.awt.Color edge = hasFocus ? palette.air() : bad.isEmpty() ? getBackground() : palette.accent();
            setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createLineBorder(edge, frame),
                    BorderFactory.createEmptyBorder(0, view.px(6) - frame, 0, view.px(6) - frame)));
            setHorizontalAlignment(JLabel.TRAILING);
            setToolTipText(bad.isEmpty() ? null : bad);
            getAccessibleContext().setAccessibleDescription(bad);
            return this;
        }
    }
}
