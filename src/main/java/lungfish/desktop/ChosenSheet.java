package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import lungfish.edit.Selection;
import lungfish.room.Circuit;
import org.jspecify.annotations.Nullable;

/** Everything that can be said of what is chosen, each in a field that takes any unit; of nothing chosen, of the room. */
final class ChosenSheet extends JPanel {
    private static final int FIELD = 200;

    private final transient View view;
    private final Stack stack = new Stack();
    private final PropertyGrid grid;
    private transient @Nullable Selection shown;
    private transient List<Circuit> circuits = List.of();
    private int columns = 1;

    ChosenSheet(View view) {
        super(new BorderLayout());
        this.view = view;
        this.grid = new PropertyGrid(view, () -> Math.max(view.px(FIELD), getWidth()));
        setName("chosen");
        getAccessibleContext().setAccessibleName("What is chosen");
        setOpaque(false);
        stack.add(grid);
        add(Side.scrolling(stack));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                layOutAnew();
            }
        });
        view.onMark(this::layOutAnew);
        view.onChange(this::layOutAnew);
    }

    /** Only when other things are chosen or can be chosen from, or there is room for more or fewer columns: a field in use stays. */
    private void layOutAnew() {
        int fitting = Math.max(1, getWidth() / view.px(FIELD));
        List<Circuit> wiring = view.desk().room().circuits();
        if (fitting != columns || !view.selection().equals(shown) || !wiring.equals(circuits)) {
            columns = fitting;
            shown = view.selection();
            circuits = wiring;
            fill();
        }
    }

    private void fill() {
        List<Property> all = Properties.of(view, view.selection());
        grid.fill(all, "", columns);
        if (all.isEmpty()) {
            grid.say("Several things of different kinds are chosen: move, copy or delete them.");
        }
    }

    /** What is wrong with what was typed last. */
    Optional<String> trouble() {
        return grid.trouble();
    }

    void takeFocus() {
        grid.takeFocus();
    }
}
