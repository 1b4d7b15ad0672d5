package lungfish.desktop;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.OptionalDouble;
import java.util.function.Consumer;
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
    private final transient Consumer<OptionalDouble> typed;
    private final transient Consumer<String> told;
    private String shown = "";

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

    private void tell() {
        OptionalDouble si = now.get();
        shown = si.isPresent() ? view.quantities().show(si.getAsDouble(), dimension) : "";
        setText(shown);
        told.accept("");
    }

    private void take() {
        String text = getText().strip();
        if (text.equals(shown)) {
            told.accept("");
            return;
        }
        if (text.isEmpty()) {
            typed.accept(OptionalDouble.empty());
            return;
        }
        String trouble = view.quantities()
                .parse(text, dimension)
                .match(
                        si -> {
                            typed.accept(OptionalDouble.of(si));
                            return "";
                        },
                        problem -> problem.found() + ". Expected " + problem.expected() + ".");
        told.accept(trouble);
        putClientProperty("JComponent.outline", trouble.isEmpty() ? null : "error");
    }
}
