package lungfish.desktop;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntSupplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** The fields in which a keeper says how far things may be off. */
final class SpreadFields extends JPanel {
    /** Where it is narrower, names stand over their fields. */
    private static final int NARROW = 420;

    private static final int FIELD = 170;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final Map<Line, JComponent> fields = new LinkedHashMap<>();
    private final Paragraph title;
    private final Paragraph trouble;
    private transient Shape laidOut = new Shape(false, 0);

    /** What the layout depends on. */
    private record Shape(boolean isNarrow, int gapPx) {}

    SpreadFields(View view, IntSupplier widthPx) {
        this.view = view;
        this.widthPx = widthPx;
        setOpaque(false);
        title = new Paragraph(view, Type::label, Palette::softInk, widthPx);
        title.setText("How far things may be off: eight of ten lie within");
        trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        trouble.setVisible(false);
        PropertyFields made = new PropertyFields(view, this::told);
        for (Property property : SettingProperties.spreads(view.desk().shared().catalogue())) {
            Line name = new Line(view, Type::body, Palette::ink);
            JComponent field = made.of(property);
            name.setText(property.label());
            name.setLabelFor(field);
            fields.put(name, field);
        }
        view.follow(this, this::layOut);
    }

    /** Fields that are being typed in stay where they are, unless the sheet takes another shape. */
    private void layOut() {
        Shape now = new Shape(widthPx.getAsInt() < view.px(NARROW), view.px(4));
        if (now.equals(laidOut)) {
            return;
        }
        laidOut = now;
        removeAll();
        setLayout(new MigLayout(
                "insets 0, fillx, hidemode 3, wrap " + (now.isNarrow() ? 1 : 2) + ", gap " + view.px(12) + " "
                        + now.gapPx(),
                now.isNarrow() ? "[grow, fill]" : "[grow, fill][" + view.px(FIELD) + "!, fill]"));
        add(title, "spanx, growx");
        fields.forEach((name, field) -> {
            add(name, "growx, wmin 0");
            add(field, "growx, wmin 0");
        });
        add(trouble, "spanx, growx");
    }

    private void told(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
        revalidate();
    }
}
