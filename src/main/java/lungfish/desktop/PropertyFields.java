package lungfish.desktop;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import lungfish.edit.Attempt;
import lungfish.room.Room;

/** Makes the field of a property. What cannot be done is told, and what was typed stays to be mended. */
final class PropertyFields {
    private static final String MIXED = "mixed";

    /** A text that may be cut in its field. */
    private static final int LONG = 20;

    private final View view;
    private final Consumer<String> told;

    /**
     * For one view.
     *
     * @param told takes what is wrong; empty when nothing is
     */
    PropertyFields(View view, Consumer<String> told) {
        this.view = view;
        this.told = told;
    }

    JComponent of(Property property) {
        JComponent field = property instanceof Property.Words words
                ? words(words)
                : property instanceof Property.Amount amount ? amount(amount) : oneOf((Property.OneOf<?>) property);
        field.setName(property.label());
        field.getAccessibleContext().setAccessibleName(property.label());
        return field;
    }

    private Room room() {
        return view.desk().room();
    }

    private void take(Attempt attempt) {
        told.accept(view.refused(attempt));
    }

    private JComponent words(Property.Words words) {
        JTextField field = new JTextField(12);
        Runnable take = () -> {
            String now = words.now().apply(room()).common().orElse("");
            if (!field.getText().strip().equals(now)) {
                take(words.say().apply(room(), field.getText().strip()));
            }
        };
        field.addActionListener(event -> take.run());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                take.run();
            }
        });
        view.follow(field, () -> {
            Property.Said<String> said = words.now().apply(room());
            field.putClientProperty("JTextField.placeholderText", said.isMixed() ? MIXED : words.usual());
            String now = said.common().orElse("");
            if (!field.isFocusOwner() && !field.getText().equals(now)) {
                field.setText(now);
                field.setCaretPosition(0); // the beginning of a long text is seen
            }
            field.setToolTipText(
                    said.common().filter(text -> text.length() > LONG).orElse(null));
        });
        return field;
    }

    private JComponent amount(Property.Amount amount) {
        QuantityField field = QuantityField.refusing(
                view,
                amount.dimension(),
                () -> amount.now()
                        .apply(room())
                        .common()
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                si -> view.refused(amount.say().apply(room(), si)),
                told);
        field.whenSilent(() -> silence(amount));
        return field;
    }

    /** Things that differ are not silent, though the field is empty. */
    private Silence silence(Property.Amount amount) {
        if (amount.now().apply(room()).isMixed()) {
            return Silence.of(MIXED);
        }
        Optional<Double> taken = view.plan().map(amount.usual().si()).flatMap(Property.Said::common);
        Property.Usual usual = amount.usual();
        return taken.map(si -> new Silence(OptionalDouble.of(si), usual.words()))
                .orElseGet(() -> Silence.of(usual.otherwise()));
    }

    private <T> JComponent oneOf(Property.OneOf<T> one) {
        JComboBox<Choice.Named<Optional<T>>> box = new JComboBox<>();
        one.choices()
                .forEach(choice -> box.addItem(new Choice.Named<>(one.name().apply(choice), choice)));
        box.addActionListener(event -> chosen(one, box.getSelectedIndex()));
        view.follow(box, () -> box.setSelectedIndex(index(one)));
        return box;
    }

    private <T> void chosen(Property.OneOf<T> one, int index) {
        if (index >= 0 && index != index(one)) {
            take(one.say().apply(room(), one.choices().get(index)));
        }
    }

    /** Nothing is shown as chosen where things differ. */
    private <T> int index(Property.OneOf<T> one) {
        Property.Said<T> said = one.now().apply(room());
        return said.isMixed() ? -1 : one.choices().indexOf(said.common());
    }

    /** All choices, after saying nothing. */
    static <T> java.util.List<Optional<T>> orNothing(Stream<T> choices) {
        return Stream.concat(Stream.of(Optional.<T>empty()), choices.map(Optional::of))
                .toList();
    }

    static <T> java.util.List<Optional<T>> always(Stream<T> choices) {
        return choices.map(Optional::of).toList();
    }
}
