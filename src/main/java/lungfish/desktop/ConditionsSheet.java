package lungfish.desktop;

import java.util.List;
import java.util.OptionalDouble;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JRadioButton;
import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.desk.Desk;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.edit.BlowerEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;

/** What the room runs under: the air around it, the bleed, and the age at which the equipment is looked at. */
final class ConditionsSheet extends SideSheet {
    private final Stack stack = new Stack();
    private final Desk desk;
    private final JComponent first;

    ConditionsSheet(View view, Side side) {
        super(view, side, "Conditions");
        this.desk = view.desk();
        this.first = SettingProperties.air().stream().map(this::field).toList().get(0);
        note("Leave a field empty if you do not know: the plan then assumes a usual value, and says so.");
        bleed();
        age();
        add(Side.scrolling(stack), "grow, push");
    }

    private JComponent field(Property property) {
        Paragraph trouble = new Paragraph(view(), Type::body, Palette::accent, this::innerPx);
        JComponent field = new PropertyFields(view(), said -> {
                    trouble.setText(said);
                    trouble.setVisible(!said.isEmpty());
                })
                .of(property);
        JLabel label = Line.title(view(), property.label());
        label.setLabelFor(field);
        trouble.setVisible(false);
        stack.add(label, "gaptop " + view().px(4));
        stack.add(field, "growx 0, wmin " + view().px(200));
        stack.add(trouble, "growx");
        return field;
    }

    private void note(String text) {
        Paragraph note = new Paragraph(view(), Type::body, Palette::softInk, this::innerPx);
        note.setText(text);
        stack.add(note, "growx");
    }

    private void bleed() {
        stack.add(Line.title(view(), "Air that the outlets do not take"), "gaptop " + view().px(8));
        ButtonGroup group = new ButtonGroup();
        JRadioButton asNeeded =
                choice("let out, down to what the room needs", () -> desk.apply(BlowerEdits.bleedAsNeeded()), group);
        JRadioButton shut = choice(
                "not let out: the valves take up the pressure", () -> desk.apply(BlowerEdits.shutTheBleed()), group);
        field(new Property.Amount(
                "Or let out down to this pressure at the blower",
                Dimension.PRESSURE,
                Property.Usual.NONE,
                room -> new Property.Said<>(List.of(Properties.boxed(bledToPa()))),
                (room, si) -> bleedTo(si)));
        follow(() -> {
            Blower.Bleed bleed = BlowerSheet.bleed(view());
            group.clearSelection();
            shut.setSelected(bleed instanceof Blower.Unbled);
            asNeeded.setSelected(
                    bleed instanceof Blower.BledTo to && to.gaugePa().isEmpty());
        });
    }

    private OptionalDouble bledToPa() {
        return BlowerSheet.bleed(view()) instanceof Blower.BledTo to ? to.gaugePa() : OptionalDouble.empty();
    }

    private static Attempt bleedTo(OptionalDouble pa) {
        return pa.isPresent() ? BlowerEdits.bleedTo(pa.getAsDouble()) : BlowerEdits.bleedAsNeeded();
    }

    private void age() {
        stack.add(Line.title(view(), "Look at the duty with"), "gaptop " + view().px(8));
        ButtonGroup machine = new ButtonGroup();
        JRadioButton tired =
                choice("the blower tired", () -> desk.lookAt(desk.age().with(Wear.TIRED)), machine);
        JRadioButton fresh =
                choice("the blower new", () -> desk.lookAt(desk.age().with(Wear.NEW)), machine);
        ButtonGroup devices = new ButtonGroup();
        JRadioButton due =
                choice("devices due for cleaning", () -> desk.lookAt(desk.age().with(Upkeep.DUE)), devices);
        JRadioButton clean =
                choice("devices clean", () -> desk.lookAt(desk.age().with(Upkeep.CLEAN)), devices);
        follow(() -> {
            tired.setSelected(desk.age().machine() == Wear.TIRED);
            fresh.setSelected(desk.age().machine() == Wear.NEW);
            due.setSelected(desk.age().devices() == Upkeep.DUE);
            clean.setSelected(desk.age().devices() == Upkeep.CLEAN);
        });
    }

    private JRadioButton choice(String text, Runnable does, ButtonGroup group) {
        JRadioButton button = new JRadioButton(text);
        button.setOpaque(false);
        button.setName(text);
        button.addActionListener(event -> does.run());
        group.add(button);
        stack.add(button);
        return button;
    }

    private void follow(Runnable tell) {
        JComponent here = this;
        view().follow(here, tell);
    }

    @Override
    void takeFocus() {
        first.requestFocusInWindow();
    }
}
