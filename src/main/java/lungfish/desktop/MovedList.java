package lungfish.desktop;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Moved;
import lungfish.reason.PartId;
import lungfish.report.EverydayWords;

/** The outlets in a disturbance, the most changed first; each leads to its place. Those that are shut are not among them. */
final class MovedList {
    private final View view;
    private final DefaultListModel<Moved> model = new DefaultListModel<>();
    private final JList<Moved> list = new JList<>(model);
    private final MovedCell cell;
    private final Consumer<PartId> leads;

    MovedList(View view, IntSupplier widthPx, BooleanSupplier isCurrent, Consumer<PartId> leads) {
        this.view = view;
        this.leads = leads;
        cell = new MovedCell(view, widthPx, isCurrent);
        list.setName("everyday-outlets");
        list.getAccessibleContext().setAccessibleName("The outlets, the most changed first");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(cell);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                lead();
            }
        });
        Keys.bind(list, "ENTER", this::lead);
    }

    JList<Moved> list() {
        return list;
    }

    private void lead() {
        Moved chosen = list.getSelectedValue();
        if (chosen != null) {
            leads.accept(chosen.need().id().part());
        }
    }

    void show(Optional<Disturbed> answer) {
        list.setBackground(view.look().palette().sheet());
        answer.ifPresent(found -> cell.says(new EverydayWords(found, view.quantities(), view.names())));
        List<Moved> outlets = answer.map(MovedList::outlets).orElse(List.of());
        if (!List.of(model.toArray()).equals(outlets)) {
            model.clear();
            model.addAll(outlets);
        }
    }

    private static List<Moved> outlets(Disturbed answer) {
        boolean isShut = answer.what().kind().isWithoutBubbles();
        return isShut
                ? answer.others()
                : Stream.concat(answer.hit().stream(), answer.others().stream()).toList();
    }
}
