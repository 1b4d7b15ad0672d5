package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The fields of properties in columns, each under its name; above them what is wrong with what was typed last. */
final class PropertyGrid extends JPanel {
    /** More letters than a column holds. */
    private static final int LONG = 24;

    private final transient View view;
    private final JPanel fields = new JPanel();
    private final Paragraph trouble;
    private @Nullable JComponent first;

    PropertyGrid(View view, IntSupplier widthPx) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gap 0 " + view.px(4), "[grow, fill]"));
        this.view = view;
        this.trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        setOpaque(false);
        fields.setOpaque(false);
        trouble.setName("trouble");
        trouble.setVisible(false);
        add(trouble, "growx");
        add(fields, "growx, wmin 0");
    }

    /**
     * Shows these from now on.
     *
     * @param of whose they are, where several have fields of the same name; empty where none is meant
     */
    void fill(List<Property> properties, String of, int columns) {
        tell("");
        fields.removeAll();
        fields.setLayout(new MigLayout(
                "insets 4 0 4 0, fillx, gap " + view.px(12) + " " + view.px(8) + ", wrap " + columns,
                "[grow, fill, sg field]".repeat(columns)));
        PropertyFields makes = new PropertyFields(view, this::tell);
        first = null;
        int column = 0;
        for (Property property : properties) {
            JComponent field = makes.of(property);
            if (!of.isEmpty()) {
                named(field, of + ": " + property.label());
            }
            first = first == null ? field : first;
            int wide = isLong(property) ? Math.min(2, columns) : 1;
            boolean isFull = column + wide > columns;
            fields.add(
                    Line.over(view, property.label(), field),
                    "wmin 0, top, spanx " + wide + (isFull ? ", newline" : ""));
            column = ((isFull ? 0 : column) + wide) % columns;
        }
        fields.revalidate();
        fields.repaint();
    }

    /** Names of things that would be cut in one column. */
    private static boolean isLong(Property property) {
        return property instanceof Property.OneOf<?> one
                ? longest(one) > LONG
                : property instanceof Property.Words words && words.isLine();
    }

    private static <T> int longest(Property.OneOf<T> one) {
        return one.choices().stream()
                .mapToInt(choice -> one.name().apply(choice).length())
                .max()
                .orElse(0);
    }

    /** Says something where the fields would be. */
    void say(String instead) {
        fields.add(Line.title(view, instead));
    }

    private static void named(JComponent field, String name) {
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(name);
    }

    private void tell(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
        revalidate();
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
