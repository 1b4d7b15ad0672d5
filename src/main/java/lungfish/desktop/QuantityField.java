package lungfish.desktop;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JTextField;
import lungfish.quantity.Dimension;

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
        view.follow(this, this::tell);
    }

    /** Shows what is so now, unless something is being typed or is still to be mended: that is never lost. */
    void tell() {
        String before = shown;
        OptionalDouble si = now.get();
        shown = si.isPresent() ? view.quantities().show(si.getAsDouble(), dimension) : "";
        boolean isTyped = !getText().strip().equals(before);
        if (!isTyped) {
            setText(shown);
        }
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
