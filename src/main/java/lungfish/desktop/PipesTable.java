package lungfish.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.TableColumn;
import lungfish.choice.PipeResult;
import lungfish.choice.PipeStudy;

/** Every size of pipe in every layout; in each cell a verdict, a price, and the taps on one common axis. */
final class PipesTable extends JTable {
    private static final int SIZE = 60;

    private final transient View view;
    private final PipesModel model;
    private final transient PipeCell cell;
    private final transient PipeHead head;

    PipesTable(View view, Runnable chosen, Runnable take) {
        super(new PipesModel());
        this.view = view;
        this.model = (PipesModel) getModel();
        this.cell = new PipeCell(view, model);
        this.head = new PipeHead(view, model);
        setName("pipes");
        getAccessibleContext().setAccessibleName("Sizes of pipe, and how the main is laid");
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        setShowGrid(false);
        setOpaque(false);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        getTableHeader().setDefaultRenderer((table, value, selected, focus, row, column) -> head.of(column));
        setDefaultRenderer(
                Object.class, (table, value, selected, focus, row, column) -> cell.of(row, column, selected, focus));
        getSelectionModel().addListSelectionListener(event -> chosen.run());
        getColumnModel().getSelectionModel().addListSelectionListener(event -> chosen.run());
        Keys.bind(this, "ENTER", take);
    }

    /** Shows a study; what was chosen stays chosen where it is there still, else the room as drawn is. */
    void show(Optional<PipeStudy> study, boolean isOld) {
        int row = getSelectedRow();
        int column = getSelectedColumn();
        boolean isOther = model.show(study);
        cell.show(study, isOld);
        setRowHeight((int) Math.ceil(PipeCell.height(view.look())));
        if (getColumnCount() > 0) {
            TableColumn sizes = getColumnModel().getColumn(0);
            sizes.setMinWidth(view.px(SIZE));
            sizes.setMaxWidth(view.px(SIZE));
        }
        setAutoscrolls(false); // what is chosen anew need not be seen at once: the headline must
        if (model.result(row, column).isPresent() && !isOther) {
            changeSelection(row, column, false, false);
        } else {
            chooseDrawn();
        }
        setAutoscrolls(true);
        revalidate();
        repaint();
    }

    private void chooseDrawn() {
        for (int row = 0; row < model.getRowCount(); row++) {
            if (model.isDrawn(row)) {
                changeSelection(row, 1, false, false);
            }
        }
    }

    /** The variant that is chosen. */
    Optional<PipeResult> chosen() {
        return model.result(getSelectedRow(), getSelectedColumn());
    }

    /** Chooses the variant in a cell. */
    void choose(int row, int column) {
        changeSelection(row, column, false, false);
    }

    /** A table in no scroll pane of its own shows no header: it stands over it. */
    Component header() {
        return getTableHeader();
    }
}
