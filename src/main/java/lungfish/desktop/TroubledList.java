package lungfish.desktop;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import lungfish.drawing.OutagePlayed;
import lungfish.outage.TankDrill;
import lungfish.reason.PartId;
import lungfish.report.OutageBrief;

/** The tanks of an outage in the order of trouble, the first ones until all are asked for; a click or Enter leads to one. */
final class TroubledList extends Stack {
    /** So many are seen at first: what follows below is not pushed out of sight. */
    private static final int FIRST = 8;

    private final transient View view;
    private final DefaultListModel<TankDrill> rows = new DefaultListModel<>();
    private final JList<TankDrill> list = new JList<>(rows);
    private final JButton all = new JButton();
    private final TroubledCell cell;
    private final transient Consumer<PartId> leads;
    private transient List<TankDrill> tanks = List.of();
    private boolean areAllShown;

    TroubledList(View view, IntSupplier widthPx, BooleanSupplier isCurrent, Consumer<PartId> leads) {
        this.view = view;
        this.leads = leads;
        this.cell = new TroubledCell(view, widthPx, isCurrent);
        list.setName("outage-tanks");
        list.getAccessibleContext().setAccessibleName("Tanks in the order of trouble");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(cell);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                lead();
            }
        });
        Keys.bind(list, "ENTER", this::lead);
        add(list, "growx, wmin 0");
        all.setName("outage-all");
        all.addActionListener(event -> {
            areAllShown = !areAllShown;
            fill();
        });
        add(all, "growx 0");
    }

    void show(OutagePlayed played, OutageBrief words) {
        cell.says(words);
        tanks = played.inOrder();
        list.setFixedCellHeight(cell.heightPx());
        list.setBackground(view.look().palette().sheet());
        fill();
    }

    private void fill() {
        List<TankDrill> then = areAllShown ? tanks : tanks.subList(0, Math.min(FIRST, tanks.size()));
        if (!List.of(rows.toArray()).equals(then)) {
            rows.clear();
            rows.addAll(then);
        }
        all.setText(areAllShown ? "Show the first " + FIRST : "Show all " + tanks.size() + " tanks");
        all.setVisible(tanks.size() > FIRST);
        revalidate();
    }

    private void lead() {
        TankDrill tank = list.getSelectedValue();
        if (tank != null) {
            leads.accept(tank.tank().id().part());
        }
    }
}
