package lungfish.desktop;

import java.awt.Cursor;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import lungfish.edit.Column;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.reason.PartId;
import lungfish.room.OutletId;

/**
 * The outlets table: sorts by any column, filters by words, and chooses with the canvas what is chosen. Cells that are inputs
 * are typed into ({@link CellInput}); a row leads to its place, an answer says why.
 */
final class OutletsTable extends JTable {
    private static final int ROW = 26;

    private final transient View view;
    private final OutletsModel model;
    private final transient Consumer<PartId> leadTo;
    private final transient BiConsumer<OutletId, OutletColumn> whyAsked;
    private final transient TableRowSorter<OutletsModel> sorter;
    private final transient TableEdits edits;
    private final transient CellInput input;
    private final transient List<TableColumn> hidden = new ArrayList<>();
    private boolean following;
    private boolean choosing;

    OutletsTable(View view, OutletsModel model, Consumer<PartId> leadTo, BiConsumer<OutletId, OutletColumn> whyAsked) {
        super(model);
        this.view = view;
        this.model = model;
        this.leadTo = leadTo;
        this.whyAsked = whyAsked;
        this.sorter = new TableRowSorter<>(model);
        this.edits = new TableEdits(view, this);
        this.input = new CellInput(view, this, edits);
        setName("outlets");
        getAccessibleContext().setAccessibleName("Outlets");
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setCellSelectionEnabled(true);
        setAutoResizeMode(AUTO_RESIZE_SUBSEQUENT_COLUMNS);
        setFillsViewportHeight(true);
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // a table keeps Tab for its cells:
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null); // here it leads on, as everywhere
        putClientProperty("JTable.autoStartsEdit", false); // else Delete and the like would begin one
        setRowSorter(sorter);
        columns();
        showMore(false);
        getSelectionModel().addListSelectionListener(event -> chosen());
        Clicks clicks = new Clicks();
        addMouseListener(clicks);
        addMouseMotionListener(clicks);
        addFocusListener(new Leaving());
        TableKeys.bind(this, edits);
        view.onChange(this::tell);
        view.onMark(this::follow);
    }

    TableEdits edits() {
        return edits;
    }

    CellInput input() {
        return input;
    }

    TableWalk walk() {
        return new TableWalk(this);
    }

    /** As wide as the sheet while no figure is cut; beyond that it scrolls. */
    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getMinimumSize().width <= getParent().getWidth();
    }

    private void columns() {
        List<OutletColumn> all = OutletColumn.ALL;
        for (int i = 0; i < all.size(); i++) {
            OutletColumn column = all.get(i);
            sorter.setComparator(i, column.order());
            TableColumn shown = getColumnModel().getColumn(i);
            shown.setCellRenderer(new OutletCell(view, column));
            shown.setHeaderRenderer(new HeadingCell(view, column, this));
            shown.setCellEditor(input);
        }
    }

    /** With the columns that are seldom needed, or without. */
    void showMore(boolean more) {
        List<TableColumn> there = IntStream.range(0, getColumnCount())
                .mapToObj(getColumnModel()::getColumn)
                .toList();
        int usual = OutletColumn.USUAL.size();
        if (!more) {
            hidden.addAll(there.subList(Math.min(usual, there.size()), there.size()));
            hidden.forEach(getColumnModel()::removeColumn);
        } else {
            hidden.forEach(getColumnModel()::addColumn);
            hidden.clear();
        }
    }

    /** Shows only the rows in which every one of these words is found. */
    void filter(String words) {
        sorter.setRowFilter(new RowFilter<OutletsModel, Integer>() {
            @Override
            public boolean include(Entry<? extends OutletsModel, ? extends Integer> entry) {
                OutletRow row = entry.getModel().row(entry.getIdentifier());
                return words.strip().isEmpty()
                        || Arrays.stream(words.strip().split("\\s+")).allMatch(row::speaksOf);
            }
        });
    }

    private void tell() {
        edits.forgetWhatIsOver();
        model.show(view.desk().seen(), view.plan(), view.shown());
        setRowHeight(view.px(ROW));
        for (int i = 0; i < getColumnCount(); i++) {
            getColumnModel().getColumn(i).setPreferredWidth(view.px(column(i).width()));
            getColumnModel().getColumn(i).setMinWidth(view.px(column(i).leastWidth()));
        }
        follow();
    }

    /** What stands in a column as it is shown. */
    OutletColumn column(int shown) {
        return OutletColumn.ALL.get(convertColumnIndexToModel(shown));
    }

    OutletRow outlet(int shown) {
        return model.row(convertRowIndexToModel(shown));
    }

    /** What is typed into a column as it is shown; empty for an answer. */
    Optional<Column> input(int shown) {
        return column(shown).input(view.shown());
    }

    /** The row that the keys are at; below 0 where there is none. */
    int leadRow() {
        int lead = getSelectionModel().getLeadSelectionIndex();
        return lead < getRowCount() && !getSelectionModel().isSelectionEmpty() ? lead : -1;
    }

    int leadColumn() {
        int lead = getColumnModel().getSelectionModel().getLeadSelectionIndex();
        return lead < getColumnCount() ? lead : -1;
    }

    /** The outlets of these rows, in the order shown. */
    List<OutletId> ids(IntStream rows) {
        return rows.mapToObj(row -> outlet(row).id()).toList();
    }

    /** Chooses on the canvas what is chosen here, and leads to the row that the keys are at. */
    private void chosen() {
        if (!following && !choosing && leadRow() >= 0) {
            choosing = true;
            OutletId lead = outlet(leadRow()).id();
            leadTo.accept(lead.part());
            view.select(Selection.of(ids(Arrays.stream(getSelectedRows())).stream()
                            .map(Part::outlet)
                            .toList())
                    .with(Part.outlet(lead)));
            choosing = false;
            repaint();
        }
    }

    /** Why the figure in the cell is what it is. */
    void askWhy() {
        if (leadRow() >= 0) {
            OutletColumn asked = leadColumn() < 0 ? OutletColumn.SPARE : column(leadColumn());
            whyAsked.accept(outlet(leadRow()).id(), asked);
        }
    }

    /** Selects the rows of the outlets that are chosen elsewhere. */
    private void follow() {
        if (!choosing) {
            following = true;
            List<Integer> rows = rowsOf(view.marked().chosen());
            if (!rows.equals(Arrays.stream(getSelectedRows()).boxed().toList())) {
                select(rows);
            }
            following = false;
        }
        repaint();
    }

    private void select(List<Integer> rows) {
        ListSelectionModel chosen = getSelectionModel();
        chosen.setValueIsAdjusting(true);
        chosen.clearSelection();
        rows.forEach(row -> chosen.addSelectionInterval(row, row));
        chosen.setValueIsAdjusting(false);
        if (getSelectedColumnCount() == 0 && getColumnCount() > 0) {
            setColumnSelectionInterval(getColumnCount() - 1, 0); // whole rows; the keys are at the first cell
        }
        if (!rows.isEmpty()) {
            scrollRectToVisible(getCellRect(rows.get(rows.size() - 1), Math.max(0, leadColumn()), true));
        }
    }

    private List<Integer> rowsOf(Set<PartId> parts) {
        return IntStream.range(0, getRowCount())
                .filter(row -> parts.contains(outlet(row).id().part()))
                .boxed()
                .toList();
    }

    /** A click chooses (that on the chosen row leads there again); a double click begins to type, or asks why. */
    private final class Clicks extends MouseAdapter {
        @Override
        public void mouseClicked(MouseEvent event) {
            chosen();
            int column = columnAtPoint(event.getPoint());
            if (event.getClickCount() == 2 && column >= 0 && input(column).isEmpty()) {
                askWhy();
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            setCursor(
                    Cursor.getPredefinedCursor(isInput(event.getPoint()) ? Cursor.TEXT_CURSOR : Cursor.DEFAULT_CURSOR));
        }

        private boolean isInput(Point at) {
            return rowAtPoint(at) >= 0
                    && columnAtPoint(at) >= 0
                    && input(columnAtPoint(at)).isPresent();
        }
    }

    /** Rows stay where they are while one works in the table; left, it is in order again. */
    private final class Leaving extends FocusAdapter {
        @Override
        public void focusLost(FocusEvent event) {
            if (!event.isTemporary() && !isEditing() && !sorter.getSortKeys().isEmpty()) {
                sorter.sort();
            }
        }
    }
}
