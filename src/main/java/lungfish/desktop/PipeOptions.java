package lungfish.desktop;

import java.util.OptionalDouble;
import javax.swing.JPanel;
import lungfish.catalogue.PipeSize;
import lungfish.quantity.Dimension;
import lungfish.room.Room;
import lungfish.room.Run;
import net.miginfocom.swing.MigLayout;

/** Of what size, and how high above the floor, the pipe is that is drawn next. */
final class PipeOptions extends JPanel {
    /** Below the ceiling: room for a hand and a clip. Common practice, no source. */
    private static final double BELOW_CEILING_M = 0.15;

    private final transient View view;
    private final Choice<PipeSize> size = new Choice<>("Pipe size");
    private transient OptionalDouble typedM = OptionalDouble.empty();

    PipeOptions(View view) {
        super(new MigLayout("insets 0, gap 6 0"));
        this.view = view;
        setOpaque(false);
        QuantityField height = new QuantityField(
                view, Dimension.LENGTH, () -> OptionalDouble.of(heightM()), si -> typedM = si, this::setToolTipText);
        height.setColumns(8);
        height.setName("Height of the pipe");
        height.getAccessibleContext().setAccessibleName("Height of the pipe above the floor");
        add(size, "wmin 0, wmax " + view.px(220));
        add(Line.title(view, "at a height of"));
        add(height);
        view.follow(this, this::offer);
    }

    private void offer() {
        String usual =
                switch (view.desk().units()) {
                    case METRIC -> "pvc-u-40-pn10";
                    case US -> "pvc-sch40-1-1-4in";
                };
        String drawn =
                view.desk().room().runs().stream().map(Run::size).findFirst().orElse(usual);
        size.offer(view.desk().shared().catalogue().pipes(), PipeSize::name, one -> one.id()
                .equals(drawn));
    }

    PipeSize chosenSize() {
        return size.chosen().orElseThrow();
    }

    /** As typed; else as the pipe that is there; else a little below the ceiling. */
    double heightM() {
        Room room = view.desk().room();
        return typedM.orElseGet(() -> room.runs().stream()
                .filter(run -> run.role() == Run.Role.MAIN)
                .map(run -> run.points().get(0).zM())
                .findFirst()
                .orElse(room.shell().heightM() - BELOW_CEILING_M));
    }
}
