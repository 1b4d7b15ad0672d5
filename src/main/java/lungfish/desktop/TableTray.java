package lungfish.desktop;

import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BadCell;
import net.miginfocom.swing.MigLayout;

/** Below the outlets table: what can be done there now; or what is wrong with a block that was pasted, and whether to take the rest. */
final class TableTray extends JPanel {
    private static final int SHOWN_ROWS = 3;

    private final transient View view;
    private final OutletsTable table;
    private final Line hint;
    private final JCheckBox more = new JCheckBox("more columns");
    private final DefaultListModel<String> complaints = new DefaultListModel<>();
    private final JList<String> list = new JList<>(complaints);
    private final JScrollPane pane = new JScrollPane(
            list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    private final JButton take = new JButton("Take what is good");
    private final JButton leave = new JButton("Leave it");

    TableTray(View view, OutletsTable table) {
        super(new MigLayout("insets 0, fillx, hidemode 3, wrap 1, gap 0 4", "[grow, fill]"));
        this.view = view;
        this.table = table;
        this.hint = new Line(view, Type::body, Palette::softInk);
        setOpaque(false);
        hint.setName("table-hint");
        hint.dropParts();
        more.setName("more-columns");
        more.setOpaque(false);
        more.setToolTipText("Least air, kind of valve, airline, check valve, whether it is essential");
        more.addActionListener(event -> table.showMore(more.isSelected()));
        take.setName("take-good");
        take.addActionListener(event -> table.edits().takeGood());
        leave.setName("leave-block");
        leave.setToolTipText("Nothing of the block is done (Esc)");
        leave.addActionListener(event -> table.edits().leave());
        complaintsList();
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, gap 8 0", "[grow, fill][][][]"));
        line.setOpaque(false);
        line.add(hint, "wmin 0");
        line.add(take);
        line.add(leave);
        line.add(more);
        add(line, "wmin 0");
        add(pane, "growx, wmin 0");
        table.edits().onTell(this::tell);
        table.getSelectionModel().addListSelectionListener(event -> tell());
        table.getColumnModel().getSelectionModel().addListSelectionListener(event -> tell());
        view.onChange(this::tell);
    }

    private void complaintsList() {
        list.setName("bad-cells");
        list.getAccessibleContext().setAccessibleName("Cells that cannot be taken");
        Keys.bind(list, "ESCAPE", () -> table.edits().leave());
    }

    private void tell() {
        Optional<Waiting> block = table.edits().waiting();
        take.setVisible(block.flatMap(each -> each.pasted().good()).isPresent());
        leave.setVisible(block.isPresent());
        more.setVisible(block.isEmpty());
        pane.setVisible(block.isPresent());
        list.setVisibleRowCount(view.isTight() ? 1 : SHOWN_ROWS);
        list.setFont(view.look().type().body());
        list.setBackground(view.look().palette().sheet());
        complaints.clear();
        block.ifPresent(each -> {
            for (BadCell bad : each.pasted().bad()) {
                complaints.addElement("× " + each.says(bad));
            }
        });
        String said = table.edits().said();
        hint.setText(block.map(Waiting::headline).orElse(said.isEmpty() ? new TableHint(view, table).says() : said));
        hint.setToolTipText(hint.getText());
        hint.inked(block.isPresent() || !said.isEmpty() ? Palette::accent : Palette::softInk);
        revalidate();
        repaint();
    }
}
