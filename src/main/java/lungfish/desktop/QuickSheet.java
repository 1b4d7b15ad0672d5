package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import lungfish.catalogue.BlowerClass;
import lungfish.catalogue.Catalogue;
import lungfish.catalogue.DeviceClass;
import lungfish.catalogue.TankSize;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.QuickStart;
import lungfish.quantity.Dimension;
import lungfish.quantity.DisplayUnits;
import lungfish.room.Room;
import lungfish.roomfile.DemoRooms;
import net.miginfocom.swing.MigLayout;

/**
 * What an empty room shows: three questions, and one button that makes a room of the answers, which then can be changed. It
 * goes when there is a rack.
 */
final class QuickSheet extends JPanel {
    private static final int TROUBLE = 560;

    private final transient View view;
    private final Paragraph trouble;
    private final transient QuickAnswers answers = new QuickAnswers();
    private transient List<QuantityField> fields = List.of();
    private final Choice<TankSize> size = new Choice<>("Size of a tank");
    private final Choice<DeviceClass> device = new Choice<>("Device in each tank");
    private final Choice<BlowerClass> pump = new Choice<>("Class of today's pumps");

    QuickSheet(View view, WindowFiles files) {
        super(new MigLayout("insets 0, align center center, hidemode 3, gap 8 10", "[][]"));
        this.view = view;
        this.trouble = new Paragraph(view, Type::body, Palette::accent, () -> view.px(TROUBLE));
        setOpaque(false);
        setName("quick-start");
        QuantityField length = field("Length of the room", Dimension.LENGTH, answers.lengthM);
        QuantityField width = field("Width of the room", Dimension.LENGTH, answers.widthM);
        QuantityField height = field("Height of the room", Dimension.LENGTH, answers.heightM);
        QuantityField tanks = field("Number of tanks", Dimension.COUNT, answers.tanks);
        QuantityField pumps = field("Number of today's pumps", Dimension.COUNT, answers.pumps);
        fields = List.of(length, width, height, tanks, pumps);
        Line title = new Line(view, Type::headline, Palette::ink);
        title.setText("Three questions, and there is a plan");
        add(title, "spanx, wrap");
        row("How big is the room?", length, word("by"), width, word("and"), height, word("high"));
        row("How many tanks?", tanks, word("of"), size);
        row("What is in each?", device);
        row("What runs today?", pumps, word("of"), pump);
        trouble.setName("quick-trouble");
        add(trouble, "skip 1, wrap");
        button();
        demos(files);
        told("");
        view.onChange(this::tell);
    }

    private QuantityField field(String says, Dimension dimension, QuickAnswers.Answer answer) {
        QuantityField field = new QuantityField(view, dimension, answer::get, answer::set, said -> tellTrouble());
        field.setColumns(dimension == Dimension.COUNT ? 4 : 7);
        field.setName(says);
        field.getAccessibleContext().setAccessibleName(says);
        field.addActionListener(event -> setUp());
        return field;
    }

    private JLabel word(String text) {
        Line word = Line.reason(view);
        word.setText(text);
        return word;
    }

    private void row(String question, JComponent... parts) {
        Line label = new Line(view, Type::label, Palette::ink);
        label.setText(question);
        label.setLabelFor(parts[0]);
        add(label, "gapright 8");
        for (int i = 0; i < parts.length; i++) {
            String first = i == 0 ? "split " + parts.length + ", " : "";
            add(parts[i], first + "wmin 0, gapright 6" + (i == parts.length - 1 ? ", wrap" : ""));
        }
    }

    private void button() {
        JButton button = new JButton("Set up the room");
        button.setName("set-up");
        button.putClientProperty("JButton.buttonType", "roundRect");
        button.addActionListener(event -> setUp());
        add(button, "skip 1, split 2");
        Line how = Line.reason(view);
        how.setText("Racks along the walls, a loop under the ceiling: all can be changed.");
        add(how, "wmin 0, wrap");
    }

    private void demos(WindowFiles files) {
        Line or = Line.reason(view);
        or.setText("Or look at a demo room:");
        add(or, "gaptop 8");
        for (String name : DemoRooms.NAMES) {
            JButton demo = new JButton(name.replace('-', ' '));
            demo.setName("demo " + name);
            demo.addActionListener(event -> files.openDemo(name));
            boolean isFirst = name.equals(DemoRooms.NAMES.get(0));
            add(demo, (isFirst ? "split " + DemoRooms.NAMES.size() + ", " : "") + "gaptop 8, gapright 6");
        }
    }

    /** Whether a room is one that the questions are for: nothing is drawn in it yet. */
    static boolean isFor(Room room) {
        return room.racks().isEmpty()
                && room.runs().isEmpty()
                && room.blowers().isEmpty()
                && room.shell().walls().isEmpty();
    }

    private void tell() {
        if (isFor(view.desk().room())) {
            answers.beginWith(view.desk().room().shell());
        }
        fields.forEach(QuantityField::tell);
        boolean isUs = view.desk().units() == DisplayUnits.US;
        Catalogue catalogue = view.desk().shared().catalogue();
        TankSize.Trade trade = TradeSizes.trade(view.desk().units());
        size.offer(
                catalogue.tankSizes().stream()
                        .filter(each -> each.trade() == trade)
                        .toList(),
                TankSize::name,
                each -> each.id().equals(isUs ? "gal-20-long" : "cm-60-30-30"));
        device.offer(catalogue.devices(), DeviceClass::name, TradeSizes::isUsual);
        double voltageV = isUs ? 120 : 230;
        pump.offer(
                catalogue.blowers().stream()
                        .filter(each -> each.kind().isPump() && each.voltageV().orElse(voltageV) == voltageV)
                        .toList(),
                BlowerClass::name,
                each -> true);
    }

    /** The first field that is to be mended says why. */
    private void tellTrouble() {
        told(fields.stream()
                .map(QuantityField::trouble)
                .filter(said -> !said.isEmpty())
                .findFirst()
                .orElse(""));
    }

    private void told(String said) {
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
    }

    /** The first answer that is not understood gets the focus; otherwise the room is made, or what is in the way is told. */
    private void setUp() {
        Optional<QuantityField> wrong =
                fields.stream().filter(field -> !field.take()).findFirst();
        if (wrong.isPresent()) {
            wrong.get().requestFocusInWindow();
            return;
        }
        QuickStart asked = answers.with(
                size.chosen().orElseThrow(),
                device.chosen().orElseThrow(),
                pump.chosen().orElseThrow());
        asked.in(view.desk().room(), view.desk().shared().catalogue())
                .match(
                        edit -> {
                            told("");
                            view.desk().apply(edit);
                            return true;
                        },
                        refused -> {
                            told(refused.sentence(view.quantities()));
                            return false;
                        });
    }

    /** To the first question. */
    void takeFocus() {
        fields.get(0).requestFocusInWindow();
    }
}
