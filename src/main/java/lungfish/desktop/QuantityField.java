package lungfish.desktop;

import java.awt.Insets;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JTextField;
import lungfish.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A field for a quantity. It shows the reader's units and takes any; empty means that nothing is said. What cannot be
 * understood stays to be mended, and is told.
 */
final class QuantityField extends JTextField {
    private final transient View view;
    private final Dimension dimension;
    private final transient Supplier<OptionalDouble> now;
    private final transient Function<OptionalDouble, String> typed;
    private final transient Consumer<String> told;
    private final JButton keep = new JButton("keep");
    private transient Supplier<Silence> silence = () -> Silence.NOTHING;
    private String shown = "";
    private String trouble = "";

    /**
     * A field.
     *
     * @param now what it shows, in SI
     * @param typed takes what was typed, in SI, when it is another than what is shown
     * @param told takes what is wrong with what was typed; empty when nothing is
     */
    QuantityField(
            View view,
            Dimension dimension,
            Supplier<OptionalDouble> now,
            Consumer<OptionalDouble> typed,
            Consumer<String> told) {
        this(view, dimension, now, told, si -> {
            typed.accept(si);
            return "";
        });
    }

    /** One whose value may be refused: the last parameter says why, or nothing. What was typed stays then too. */
    static QuantityField refusing(
            View view,
            Dimension dimension,
            Supplier<OptionalDouble> now,
            Function<OptionalDouble, String> typed,
            Consumer<String> told) {
        return new QuantityField(view, dimension, now, told, typed);
    }

    private QuantityField(
            View view,
            Dimension dimension,
            Supplier<OptionalDouble> now,
            Consumer<String> told,
            Function<OptionalDouble, String> typed) {
        super(10);
        this.view = view;
        this.dimension = dimension;
        this.now = now;
        this.typed = typed;
        this.told = told;
        addActionListener(event -> take());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                take();
            }
        });
        putClientProperty("JTextField.selectAllOnFocusPolicy", "always"); // what is typed replaces the number
        putClientProperty("JTextField.selectAllOnMouseClick", true);
        keep.setName("keep");
        keep.putClientProperty("JButton.buttonType", "toolBarButton");
        keep.setMargin(new Insets(0, 4, 0, 4));
        keep.addActionListener(event -> keep());
        putClientProperty("JTextField.trailingComponent", keep);
        Keys.bind(this, "ctrl ENTER", this::keep);
        view.follow(this, this::tell);
    }

    /** What it means when nothing is said: shown while it is empty; a number can be kept as one's own. */
    void whenSilent(Supplier<Silence> means) {
        silence = means;
        tell();
    }

    /** Makes what is assumed one's own: that very number, not what is shown of it. */
    private void keep() {
        Silence means = silence.get();
        if (now.get().isEmpty() && means.takenSi().isPresent()) {
            requestFocusInWindow();
            taken(means.takenSi());
        }
    }

    /** Shows what is so now, unless something is being typed or is still to be mended: that is never lost. */
    void tell() {
        String before = shown;
        OptionalDouble si = now.get();
        shown = si.isPresent() ? view.quantities().show(si.getAsDouble(), dimension) : "";
        boolean isTyped = !getText().strip().equals(before);
        if (!isTyped && !getText().equals(shown)) {
            setText(shown);
        }
        tellSilence();
    }

    private void tellSilence() {
        Silence means = silence.get();
        String taken = means.taken(view.quantities(), dimension);
        boolean canKeep = now.get().isEmpty() && !taken.isEmpty();
        String own = "Keep " + taken + " as your own value (Ctrl+Enter)";
        putClientProperty("JTextField.placeholderText", means.says(view.quantities(), dimension));
        setToolTipText(now.get().isEmpty() ? blankAsNull(means.says(view.quantities(), dimension)) : null);
        keep.setVisible(canKeep);
        keep.setToolTipText(own);
        keep.getAccessibleContext().setAccessibleName(own);
        keep.setFont(view.look().type().drawing());
    }

    private static @Nullable String blankAsNull(String text) {
        return text.isBlank() ? null : text;
    }

    /** Takes what was typed. Whether it could be understood. */
    boolean take() {
        String text = getText().strip();
        if (text.equals(shown)) {
            return told("");
        }
        if (text.isEmpty()) {
            return taken(OptionalDouble.empty());
        }
        return view.quantities()
                .parse(text, dimension)
                .match(
                        si -> taken(OptionalDouble.of(si)),
                        problem -> told(problem.found() + ". Expected " + problem.expected() + "."));
    }

    private boolean taken(OptionalDouble si) {
        String refused = typed.apply(si);
        if (!refused.isEmpty()) {
            return told(refused);
        }
        setText(shown); // it is typed no longer: whatever becomes of it is shown
        tell();
        return told("");
    }

    private boolean told(String said) {
        trouble = said;
        putClientProperty("JComponent.outline", said.isEmpty() ? null : "error");
        getAccessibleContext().setAccessibleDescription(said);
        told.accept(said);
        return said.isEmpty();
    }

    /** What is wrong with what stands in it; empty when nothing is. */
    String trouble() {
        return trouble;
    }
}
