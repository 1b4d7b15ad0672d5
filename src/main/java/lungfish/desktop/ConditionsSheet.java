package lungfish.desktop;

import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JRadioButton;
import lungfish.blower.Wear;
import lungfish.demand.Upkeep;
import lungfish.desk.Desk;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BlowerEdits;
import lungfish.edit.ClimateEdits;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;

/** What the room runs under: the air around it, the bleed, and the age at which the equipment is looked at. */
final class ConditionsSheet extends SideSheet {
    private final Stack stack = new Stack();
    private final Desk desk;
    private final QuantityField temperature;

    ConditionsSheet(View view, Side side) {
        super(view, side, "Conditions");
        this.desk = view.desk();
        this.temperature = field(
                "Room temperature",
                Dimension.TEMPERATURE,
                () -> desk.room().climate().temperatureK(),
                si -> desk.apply(ClimateEdits.temperatureK(si)));
        field(
                "Altitude above the sea",
                Dimension.ALTITUDE,
                () -> desk.room().climate().altitudeM(),
                si -> desk.apply(ClimateEdits.altitudeM(si)));
        note("Leave a field empty if you do not know: the plan then assumes a usual value, and says so.");
        bleed();
        age();
        add(Side.scrolling(stack), "grow, push");
    }

    private QuantityField field(
            String name, Dimension dimension, Supplier<OptionalDouble> now, Consumer<OptionalDouble> typed) {
        Paragraph trouble = new Paragraph(view(), Type::body, Palette::accent, this::innerPx);
        QuantityField field = new QuantityField(view(), dimension, now, typed, said -> {
            trouble.setText(said);
            trouble.setVisible(!said.isEmpty());
        });
        JLabel label = Line.title(view(), name);
        label.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(name);
        field.setName(name);
        stack.add(label, "gaptop " + view().px(4));
        stack.add(field, "growx 0, wmin " + view().px(160));
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
        field("Or let out down to this pressure at the blower", Dimension.PRESSURE, this::bledToPa, this::bleedTo);
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

    private void bleedTo(OptionalDouble pa) {
        desk.apply(pa.isPresent() ? BlowerEdits.bleedTo(pa.getAsDouble()) : BlowerEdits.bleedAsNeeded());
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
        temperature.requestFocusInWindow();
    }
}
