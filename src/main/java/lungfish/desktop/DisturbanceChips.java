package lungfish.desktop;

import java.awt.Insets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntSupplier;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import lungfish.everyday.Disturbance.Kind;
import lungfish.report.EverydayWords;

/** The everyday disturbances, one click each. */
final class DisturbanceChips extends JPanel {
    private static final int GAP = 4;

    private final Map<Kind, JToggleButton> chips = new EnumMap<>(Kind.class);
    private Kind chosen = Kind.HALF_DRAIN;

    DisturbanceChips(View view, IntSupplier widthPx, Runnable asked) {
        super(new Wrapping(widthPx, view.px(GAP)));
        setOpaque(false);
        setName("disturbances");
        getAccessibleContext().setAccessibleName("What happens");
        ButtonGroup group = new ButtonGroup();
        for (Kind kind : Kind.values()) {
            JToggleButton chip = new JToggleButton(EverydayWords.name(kind));
            chip.setName("disturbance-" + kind);
            chip.putClientProperty("JButton.buttonType", "roundRect");
            chip.setMargin(new Insets(1, view.px(GAP), 1, view.px(GAP)));
            chip.addActionListener(event -> {
                chosen = kind;
                asked.run();
            });
            group.add(chip);
            chips.put(kind, chip);
            add(chip);
        }
        view.follow(this, () -> chips.values()
                .forEach(chip -> chip.setFont(view.look().type().label())));
        choose(chosen);
    }

    Kind chosen() {
        return chosen;
    }

    void choose(Kind kind) {
        chosen = kind;
        chip(kind).setSelected(true);
    }

    void takeFocus() {
        chip(chosen).requestFocusInWindow();
    }

    private JToggleButton chip(Kind kind) {
        return Objects.requireNonNull(chips.get(kind));
    }
}
