package lungfish.desktop;

import java.awt.BorderLayout;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Selection;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Everything that can be said of what is chosen, each in a field that takes any unit; of nothing chosen, of the room. */
final class ChosenSheet extends JPanel {
    private static final int FIELD = 200;

    private final transient View view;
    private final Stack stack = new Stack();
    private final JPanel fields = new JPanel();
    private final Paragraph trouble;
    private @Nullable JComponent first;
    private transient @Nullable Selection shown;
    private int columns = 1;

    ChosenSheet(View view) {
        super(new BorderLayout());
        this.view = view;
        this.trouble = new Paragraph(view, Type::body, Palette::accent, () -> Math.max(view.px(FIELD), getWidth()));
        setName("chosen");
        getAccessibleContext().setAccessibleName("What is chosen");
        fields.setOpaque(false);
        trouble.setVisible(false);
        setOpaque(false);
        stack.add(trouble);
        stack.add(fields);
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

    /** Only when other things are chosen, or there is room for more or fewer columns: a field in use stays. */
    private void layOutAnew() {
        int fitting = Math.max(1, getWidth() / view.px(FIELD));
        if (fitting != columns || !view.selection().equals(shown)) {
            columns = fitting;
            shown = view.selection();
            fill();
        }
    }

    private void fill() {
        tell("");
        fields.removeAll();
        fields.setLayout(new MigLayout(
                "insets 4 0 4 0, fillx, gap " + view.px(12) + " " + view.px(8) + ", wrap " + columns,
                "[grow, fill, sg field]"));
        PropertyFields makes = new PropertyFields(view, this::tell);
        List<Property> all = Properties.of(
                view.desk().room(), view.selection(), view.desk().shared().catalogue());
        first = null;
        for (Property property : all) {
            JComponent field = makes.of(property);
            first = first == null ? field : first;
            fields.add(Line.over(view, property.label(), field), "wmin 0, top");
        }
        if (all.isEmpty()) {
            fields.add(Line.title(view, "Several things of different kinds are chosen: move, copy or delete them."));
        }
        fields.revalidate();
        fields.repaint();
    }

    private void tell(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
    }

    /** What is wrong with what was typed last. */
    Optional<String> trouble() {
        return trouble.isVisible() ? Optional.of(trouble.getText()) : Optional.empty();
    }

    void takeFocus() {
        if (first != null) {
            first.requestFocusInWindow();
        }
    }
}
