package lungfish.desktop;

import java.awt.Color;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javax.swing.JPanel;
import javax.swing.JTextField;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BlowerDraft;
import lungfish.edit.BlowerSlot;
import lungfish.edit.DraftLook;
import net.miginfocom.swing.MigLayout;

/** One figure of a data sheet: its title, its field, and what is to mend beside it. */
final class DataField extends JPanel {
    private final transient View view;
    private final BlowerSlot slot;
    private final JTextField field = new JTextField(8);
    private final Paragraph trouble;
    private boolean isTelling;
    private boolean isWrong;

    DataField(View view, BlowerSlot slot, Consumer<String> typed, IntSupplier widthPx) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gap 0 " + view.px(2), "[grow, fill]"));
        this.view = view;
        this.slot = slot;
        this.trouble = new Paragraph(view, Type::drawing, this::ink, widthPx);
        setOpaque(false);
        field.setName("slot-" + slot.name());
        field.getAccessibleContext().setAccessibleName(slot.title());
        field.putClientProperty("JTextField.placeholderText", optional());
        Typing.on(field, () -> {
            if (!isTelling) {
                typed.accept(field.getText());
            }
        });
        add(Line.over(view, slot.title(), field), "wmin 0");
        add(trouble, "wmin 0");
    }

    private Color ink(Palette palette) {
        return isWrong ? palette.accent() : palette.softInk();
    }

    /** What is taken where a sheet does not say it. */
    private String optional() {
        return switch (slot) {
            case WATTS -> "for all points";
            case LEVEL, DISTANCE, VOLTAGE, FREQUENCY -> "if the sheet says it";
            case REBUILD_PRICE, REBUILD, LIFE -> "usual of its kind";
            case CONTINUOUS, PRICE -> "";
        };
    }

    /** A text that is only missing is said softly; a wrong one is framed too. */
    void tell(BlowerDraft draft, DraftLook look) {
        String text = draft.texts().getOrDefault(slot, "");
        if (!field.getText().strip().equals(text.strip())) {
            isTelling = true;
            field.setText(text);
            isTelling = false;
        }
        Optional<DraftLook.Complaint> wrong = look.of(slot);
        isWrong = wrong.filter(each -> !each.isMissing()).isPresent();
        String says = wrong.map(DraftLook.Complaint::says).orElse("");
        trouble.setText(isWrong ? "× " + says : says);
        trouble.setForeground(ink(view.look().palette()));
        trouble.setVisible(!says.isEmpty());
        field.putClientProperty("JComponent.outline", isWrong ? "error" : null);
        field.getAccessibleContext().setAccessibleDescription(says);
    }
}
