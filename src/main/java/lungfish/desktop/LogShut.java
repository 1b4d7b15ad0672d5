package lungfish.desktop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import lungfish.catalogue.FittingClass;
import lungfish.drawing.Look;
import lungfish.quantity.Dimension;
import lungfish.report.Sentences;
import lungfish.room.Outlet;
import lungfish.room.Reading;
import lungfish.room.Run;
import net.miginfocom.swing.MigLayout;

/** What stood shut while something was read: valves of the pipe, each with a box, and the outlets chosen on the drawing. */
final class LogShut extends JPanel {
    private final transient View view;
    private final JCheckBox any = box("log-shut", "Something stood shut meanwhile");
    private final JCheckBox outlets = box("log-shut-outlets", "");
    private final transient Map<Outlet.OnRun, JCheckBox> valves = new LinkedHashMap<>();
    private transient Optional<Look> look = Optional.empty();

    LogShut(View view) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gap 0", "[grow, fill]"));
        this.view = view;
        setOpaque(false);
        any.addActionListener(event -> unfold());
        view.followMarks(this, this::tellOutlets);
        tell();
    }

    private static JCheckBox box(String name, String words) {
        JCheckBox box = new JCheckBox(words);
        box.setName(name);
        box.setOpaque(false);
        return box;
    }

    /** The valves that are in the pipe now; those that are ticked stay so. */
    void tell() {
        Map<Outlet.OnRun, JCheckBox> now = new LinkedHashMap<>();
        for (Run run : view.desk().room().runs()) {
            run.fittings().stream()
                    .filter(this::isValve)
                    .map(fitting -> new Outlet.OnRun(run.id(), fitting.atM()))
                    .forEach(at -> now.put(at, valves.getOrDefault(at, box("log-shut: " + now.size(), ""))));
        }
        boolean isOther = !now.equals(valves) || !look.equals(Optional.of(view.look()));
        valves.clear();
        valves.putAll(now);
        valves.forEach((at, box) -> box.setText("Valve at " + view.quantities().show(at.atM(), Dimension.LENGTH)
                + " on " + view.names().of(at.run().part())));
        if (isOther) {
            look = Optional.of(view.look());
            layOut();
        }
        tellOutlets();
    }

    private boolean isValve(Run.Fitting fitting) {
        return view.desk()
                .shared()
                .catalogue()
                .fitting(fitting.kind())
                .filter(FittingClass::valve)
                .isPresent();
    }

    private void layOut() {
        removeAll();
        add(any);
        String indent = "wmin 0, gapleft " + view.px(20);
        valves.values().forEach(box -> add(box, indent));
        add(outlets, indent);
        List<JCheckBox> boxes = new ArrayList<>(valves.values());
        boxes.addAll(List.of(any, outlets));
        boxes.forEach(box -> box.setFont(view.look().type().body()));
        unfold();
    }

    /** What stood shut is asked only where something did. */
    private void unfold() {
        valves.values().forEach(box -> box.setVisible(any.isSelected()));
        outlets.setVisible(any.isSelected());
        tellOutlets();
        revalidate();
        repaint();
    }

    private void tellOutlets() {
        int many = view.chosenOutlets().size();
        outlets.setText(
                many == 0
                        ? "Outlets: choose them on the drawing"
                        : Sentences.counted(many, "outlet") + " chosen on the drawing");
        outlets.setEnabled(many > 0);
    }

    /** What stood shut, as it is ticked. */
    Reading.Shut shut() {
        if (!any.isSelected()) {
            return Reading.Shut.NOTHING;
        }
        return new Reading.Shut(
                outlets.isSelected() ? view.chosenOutlets() : List.of(),
                valves.entrySet().stream()
                        .filter(valve -> valve.getValue().isSelected())
                        .map(Map.Entry::getKey)
                        .toList());
    }

    /** Nothing stood shut. */
    void clear() {
        any.setSelected(false);
        outlets.setSelected(false);
        valves.values().forEach(box -> box.setSelected(false));
        unfold();
    }
}
