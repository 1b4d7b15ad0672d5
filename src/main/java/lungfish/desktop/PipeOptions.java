package lungfish.desktop;

import java.util.OptionalDouble;
import java.util.stream.Stream;
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
    private final QuantityField height;
    private transient OptionalDouble typedM = OptionalDouble.empty();
    private transient OptionalDouble begunM = OptionalDouble.empty();
    private transient OptionalDouble raisedM = OptionalDouble.empty();

    PipeOptions(View view) {
        super(new MigLayout("insets 0, gap 6 0"));
        this.view = view;
        setOpaque(false);
        height = new QuantityField(
                view, Dimension.LENGTH, () -> OptionalDouble.of(heightM()), this::type, this::setToolTipText);
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

    private void type(OptionalDouble si) {
        typedM = si;
        raisedM = OptionalDouble.empty();
    }

    /** A pipe that begins on another goes on at the height of that one, unless another height was typed. */
    void beginAt(double heightM) {
        begunM = OptionalDouble.of(heightM);
        height.tell();
    }

    /** Higher by so much, m; not through the floor, nor through the ceiling. */
    void raise(double byM) {
        double most = view.desk().room().shell().heightM();
        raisedM = OptionalDouble.of(Math.max(0, Math.min(heightM() + byM, most)));
        height.tell();
    }

    /** The pipe is done: the next one begins as high as this one did, or as was typed. */
    void end() {
        raisedM = OptionalDouble.empty();
        begunM = OptionalDouble.empty();
        height.tell();
    }

    /** As raised on the way; else as typed; else as where it began; else as the pipe that is there; else a little below the ceiling. */
    double heightM() {
        return Stream.of(raisedM, typedM, begunM)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .findFirst()
                .orElseGet(this::usualM);
    }

    private double usualM() {
        Room room = view.desk().room();
        return room.runs().stream()
                .filter(run -> run.role() == Run.Role.MAIN)
                .map(run -> run.points().get(0).zM())
                .findFirst()
                .orElse(room.shell().heightM() - BELOW_CEILING_M);
    }
}
