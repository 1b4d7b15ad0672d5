package lungfish.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.DefaultCellEditor;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.TableModelEvent;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellEditor;
import javax.swing.table.TableColumn;
import lungfish.drawing.Palette;
import lungfish.edit.BadCell;
import lungfish.edit.TankDraft;

/** A list of tanks as it stands in its file, to be mended cell by cell; above each column what it means. */
final class TankListTable extends JTable {
    private static final int ROW = 26;
    private static final int NUMBER = 52;
    private static final int COLUMN = 118;

    private final transient View view;
    private final TankListModel model;
    private final MeaningHeader header;

    TankListTable(View view, Consumer<UnaryOperator<TankDraft>> change) {
        super(new TankListModel(change));
        this.view = view;
        this.model = (TankListModel) getModel();
        this.header = new MeaningHeader(view, this, model);
        setName("tank-list");
        getAccessibleContext().setAccessibleName("The list, row by row");
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        setSurrendersFocusOnKeystroke(true);
        putClientProperty(
                "terminateEditOnFocusLost", true); // whatever is typed is taken: what is wrong with it is told then
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setDefaultRenderer(new Heading());
        setDefaultRenderer(Object.class, new Cell());
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName("Cell of the list");
        field.setName("list-cell");
        setDefaultEditor(Object.class, new DefaultCellEditor(field));
    }

    void show(TankDraft draft, TankDraft.Look look) {
        setRowHeight(view.px(ROW));
        if (model.show(draft, look.bad())) {
            for (int i = 0; i < getColumnCount(); i++) {
                TableColumn column = getColumnModel().getColumn(i);
                column.setMinWidth(view.px(NUMBER));
                column.setPreferredWidth(view.px(i == 0 ? NUMBER : COLUMN));
            }
        }
        header.tell();
        repaint();
    }

    /** To a bad cell. */
    void lead(BadCell bad) {
        int row = model.rowOf(bad);
        if (row >= 0) {
            changeSelection(row, model.columnOf(bad), false, false);
            requestFocusInWindow();
        }
    }

    /** What stands in the cell gives way to what is typed. */
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

    /** The keys stay where they are while cells are mended. */
    @Override
    public void tableChanged(TableModelEvent event) {
        int row = getSelectedRow();
        int column = getSelectedColumn();
        super.tableChanged(event);
        if (row >= 0 && row < getRowCount() && column >= 0 && column < getColumnCount()) {
            changeSelection(row, column, false, false);
        }
    }

    /** Above the columns of a pane stands not the heading alone. */
    @Override
    protected void configureEnclosingScrollPane() {
        super.configureEnclosingScrollPane();
        if (SwingUtilities.getAncestorOfClass(JScrollPane.class, this) instanceof JScrollPane pane) {
            putHeadingsOn(pane);
        }
    }

    void putHeadingsOn(JScrollPane pane) {
        header.takeHeadings(); // they may have been put above the columns alone
        pane.setColumnHeaderView(header);
    }

    private final class Heading extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            super.getTableCellRendererComponent(table, value, false, false, row, column);
            setFont(view.look().type().label());
            setForeground(view.look().palette().softInk());
            setBackground(view.look().palette().sheet());
            setBorder(BorderFactory.createEmptyBorder(view.px(5), view.px(6), view.px(5), view.px(6)));
            setToolTipText(getText());
            return this;
        }
    }

    /** A bad cell is crossed and framed; a column that is left out steps back. */
    private final class Cell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
            Palette palette = view.look().palette();
            BadCell bad = model.badAt(row, column).orElse(null);
            boolean isCrossed = bad != null || (column == 0 && model.isBad(row));
            super.getTableCellRendererComponent(
                    table, isCrossed ? "× " + value : value, isSelected, false, row, column);
            boolean isOut = column > 0 && model.meaning(column).isEmpty();
            setFont(view.look().type().body());
            setForeground(isCrossed ? palette.accent() : isOut || column == 0 ? palette.softInk() : palette.ink());
            setBackground(
                    bad != null || isSelected
                            ? palette.accentSoft()
                            : isOut || column == 0 ? palette.paper() : palette.sheet());
            int frame = view.px(hasFocus ? 2 : 1);
            java.awt.Color edge = hasFocus ? palette.air() : bad != null ? palette.accent() : getBackground();
            setBorder(BorderFactory.createCompoundBorder(
                    BorderFactory.createLineBorder(edge, frame),
                    BorderFactory.createEmptyBorder(0, view.px(6) - frame, 0, view.px(6) - frame)));
            setHorizontalAlignment(column == 0 ? JLabel.TRAILING : JLabel.LEADING);
            setToolTipText(bad != null ? bad.complaint() : String.valueOf(value));
            getAccessibleContext().setAccessibleDescription(getToolTipText());
            return this;
        }
    }
}
