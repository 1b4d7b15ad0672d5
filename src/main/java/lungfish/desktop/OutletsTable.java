package lungfish.desktop;

import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.RowFilter;
import javax.swing.table.TableColumn;
import javax.swing.table.TableRowSorter;
import lungfish.reason.PartId;
import lungfish.room.OutletId;

/** The outlets table: sorts by any column, filters by words, and chooses with the canvas what is chosen. A row leads to its place, a cell says why. */
final class OutletsTable extends JTable {
    private static final int ROW = 26;

    private final transient View view;
    private final OutletsModel model;
    private final transient Consumer<PartId> leadTo;
    private final transient BiConsumer<OutletId, OutletColumn> whyAsked;
    private final transient TableRowSorter<OutletsModel> sorter;
    private boolean following;

    OutletsTable(View view, OutletsModel model, Consumer<PartId> leadTo, BiConsumer<OutletId, OutletColumn> whyAsked) {
        super(model);
        this.view = view;
        this.model = model;
        this.leadTo = leadTo;
        this.whyAsked = whyAsked;
        this.sorter = new TableRowSorter<>(model);
        setName("outlets");
        getAccessibleContext().setAccessibleName("Outlets");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setAutoResizeMode(AUTO_RESIZE_SUBSEQUENT_COLUMNS);
        setFillsViewportHeight(true);
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // a table keeps Tab for its cells:
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null); // here it leads on, as everywhere
        setRowSorter(sorter);
        columns();
        getSelectionModel().addListSelectionListener(event -> chosen());
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                chosen(); // a click on the chosen row leads there again
                if (event.getClickCount() == 2) {
                    askWhy();
                }
            }
        });
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "why");
        getActionMap().put("why", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                askWhy();
            }
        });
        view.onChange(this::tell);
        view.onMark(this::follow);
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
        }
    }

    /** Shows only the rows in which every one of these words is found. */
    void filter(String words) {
        sorter.setRowFilter(new RowFilter<OutletsModel, Integer>() {
            @Override
            public boolean include(Entry<? extends OutletsModel, ? extends Integer> entry) {
                OutletRow row = entry.getModel().row(entry.getIdentifier());
                return words.strip().isEmpty()
                        || java.util.Arrays.stream(words.strip().split("\\s+")).allMatch(row::speaksOf);
            }
        });
    }

    private void tell() {
        view.plan().ifPresentOrElse(plan -> model.show(plan, view.shown()), model::showNothing);
        setRowHeight(view.px(ROW));
        List<OutletColumn> all = OutletColumn.ALL;
        for (int i = 0; i < all.size(); i++) {
            getColumnModel().getColumn(i).setPreferredWidth(view.px(all.get(i).width())); // columns stay in their order
            getColumnModel().getColumn(i).setMinWidth(view.px(all.get(i).leastWidth()));
        }
        follow();
    }

    private void chosen() {
        int row = getSelectedRow();
        if (!following && row >= 0) {
            leadTo.accept(part(row));
        }
    }

    /** Why the figure in the cell is what it is. */
    private void askWhy() {
        int row = getSelectedRow();
        int column = getColumnModel().getSelectionModel().getLeadSelectionIndex();
        if (row >= 0) {
            OutletColumn asked =
                    column < 0 ? OutletColumn.SPARE : OutletColumn.ALL.get(convertColumnIndexToModel(column));
            whyAsked.accept(model.row(convertRowIndexToModel(row)).need().id(), asked);
        }
    }

    private PartId part(int row) {
        return model.row(convertRowIndexToModel(row)).need().id().part();
    }

    /** Selects the row of the outlet that is chosen elsewhere. */
    private void follow() {
        following = true;
        int row = view.chosen().map(this::rowOf).orElse(-1);
        if (row < 0) {
            clearSelection();
        } else if (row != getSelectedRow()) {
            setRowSelectionInterval(row, row);
            scrollRectToVisible(getCellRect(row, 0, true));
        }
        following = false;
        repaint();
    }

    private int rowOf(PartId part) {
        for (int row = 0; row < getRowCount(); row++) {
            if (part(row).equals(part)) {
                return row;
            }
        }
        return -1;
    }
}
