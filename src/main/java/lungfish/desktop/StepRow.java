package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import lungfish.document.Part;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** A step of a checklist with its box: the box stays the same while its words change, so that it keeps the focus. */
final class StepRow extends JPanel {
    private static final int GAP = 6;
    private static final int BOX = 26;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final JCheckBox box = new JCheckBox();
    private final Paragraph action;
    private final Paragraph detail;
    private final Paragraph expected;
    private final Paragraph done;
    private String key = "";

    /**
     * A row without a step.
     *
     * @param ticks takes the key of the step, and the day on which it was done; empty: not done after all
     */
    StepRow(View view, IntSupplier widthPx, BiConsumer<String, Optional<LocalDate>> ticks) {
        super(new MigLayout("insets 0, fillx, gap " + view.px(GAP) + " 0", "[" + view.px(BOX) + "!][grow, fill]"));
        this.view = view;
        this.widthPx = () -> widthPx.getAsInt() - view.px(BOX + GAP);
        setOpaque(false);
        box.setOpaque(false);
        box.addActionListener(
                event -> ticks.accept(key, box.isSelected() ? Optional.of(view.today()) : Optional.empty()));
        JPanel words =
                new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gap 0 " + view.px(2), "[grow, fill]"));
        words.setOpaque(false);
        action = text(words, Type::label, Palette::ink);
        detail = text(words, Type::body, Palette::softInk);
        expected = text(words, Type::body, Palette::ink);
        done = text(words, Type::body, Palette::softInk);
        add(box, "aligny top");
        add(words, "wmin 0");
    }

    /** Shows this step from now on. */
    void tell(Part.Step step) {
        key = step.key();
        box.setName("tick: " + step.key());
        box.getAccessibleContext().setAccessibleName(step.action());
        box.setSelected(step.done().isPresent());
        action.inked(step.done().isPresent() ? Palette::softInk : Palette::ink);
        say(action, step.action());
        say(detail, step.detail());
        say(expected, step.expected().isEmpty() ? "" : "→ " + step.expected());
        say(done, step.done().map(day -> "done " + day).orElse(""));
    }

    private static void say(Paragraph paragraph, String text) {
        if (!paragraph.getText().equals(text)) {
            paragraph.setText(text);
        }
        paragraph.setVisible(!text.isEmpty());
    }

    private Paragraph text(JPanel words, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view, type, ink, widthPx);
        words.add(paragraph, "wmin 0");
        return paragraph;
    }
}
