package lungfish.desktop;

import java.awt.KeyboardFocusManager;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.OwnValues;
import lungfish.reason.Assumption;
import lungfish.reason.PartId;
import lungfish.report.Sentences;
import lungfish.report.SharedAssumption;
import net.miginfocom.swing.MigLayout;

/** One thing that is assumed: what, why so, and the field that says it instead, or how else it can be said. */
final class AssumedRow extends JPanel {
    private static final int FIELD = 190;
    private static final int SHOW = 76;
    private static final int WIDEST_TEXT = 460;

    private final transient View view;
    private final transient SharedAssumption assumed;
    private final transient Optional<QuantityField> field;
    private final Paragraph trouble;
    private final Paragraph what;
    private final Paragraph because;
    private final JButton show = new JButton("Show");
    private final JComponent first;

    AssumedRow(View view, SharedAssumption assumed, IntSupplier widthPx, Consumer<PartId> leadTo) {
        super(new MigLayout("insets 2 0 4 0, fillx, gap " + view.px(12) + " 1", "[][][]push"));
        this.view = view;
        this.assumed = assumed;
        IntSupplier textPx = () ->
                Math.max(view.px(120), Math.min(view.px(WIDEST_TEXT), widthPx.getAsInt() - view.px(FIELD + SHOW + 24)));
        this.what = new Paragraph(view, Type::body, Palette::ink, textPx);
        this.because = new Paragraph(view, Type::drawing, Palette::softInk, textPx);
        this.trouble = new Paragraph(view, Type::body, Palette::accent, widthPx);
        this.field = AssumedField.of(view, assumed, this::told);
        this.first = field.<JComponent>map(each -> each).orElseGet(this::figure);
        setOpaque(false);
        trouble.setVisible(false);
        add(what, "growx, wmin 0");
        add(first, "spany 2, top, w " + view.px(FIELD) + "!");
        add(show, "spany 2, top, w " + view.px(SHOW) + "!, wrap");
        add(because, "growx, wmin 0, wrap");
        add(trouble, "spanx, growx, hidemode 3");
        lead(leadTo);
        tell();
    }

    private void lead(Consumer<PartId> leadTo) {
        PartId place = assumed.first().where();
        boolean isPlace = Handles.of(place).isPresent();
        show.setName("show");
        show.setVisible(isPlace);
        show.getAccessibleContext().setAccessibleName("Show " + view.names().of(place));
        show.addActionListener(event -> leadTo.accept(place));
    }

    private void told(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
        revalidate();
    }

    private Line figure() {
        Assumption assumption = assumed.first();
        Line line = new Line(view, Type::body, Palette::softInk);
        line.setText(view.quantities().show(assumption.si(), assumption.dimension()));
        return line;
    }

    void tell() {
        String place = view.sentences().place(assumed);
        String name = Sentences.capital(assumed.first().what());
        what.setText(place.isEmpty() || name.contains(place) ? name : name + ", " + place);
        String otherwise =
                field.isPresent() ? "" : OwnValues.otherwise(assumed.first().key());
        because.setText(
                Sentences.capital(assumed.first().because()) + "." + (otherwise.isEmpty() ? "" : " " + otherwise));
        if (first instanceof Line line) {
            line.setText(
                    view.quantities().show(assumed.first().si(), assumed.first().dimension()));
        }
    }

    boolean canBeSaid() {
        return field.isPresent();
    }

    boolean holdsFocus() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, this);
    }

    void takeFocus() {
        (canBeSaid() ? first : show).requestFocusInWindow();
    }
}
