package lungfish.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JSeparator;
import javax.swing.SwingUtilities;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.plan.Plan;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Blower;
import lungfish.room.Circuit;

/**
 * All that keeps the air on when something fails, as the keeper has it: each thing can be added, said in any unit, and taken
 * away again. On top is what it comes to.
 */
final class BackupSheet extends SideSheet {
    private static final String CODES =
            "Mains power beside water, batteries and generators: follow local codes, and leave the wiring to a licensed"
                    + " electrician.";

    private final Side side;
    private final Paragraph headline;
    private final Paragraph reason;
    private final Paragraph nothing;
    private final Paragraph trouble;
    private final Stack parts = new Stack();
    private transient Optional<Shape> shown = Optional.empty();

    /** What the layout depends on: a field in use stays while this does. */
    private record Shape(List<List<String>> parts, List<Circuit> circuits, int widthPx, int fieldPx) {}

    BackupSheet(View view, Side side) {
        super(view, side, "Backup: what there is");
        this.side = side;
        this.headline = new Paragraph(view, Type::headline, Palette::ink, this::contentPx);
        this.reason = new Paragraph(view, Type::body, Palette::softInk, this::contentPx);
        this.nothing = new Paragraph(view, Type::body, Palette::accent, this::contentPx);
        this.trouble = new Paragraph(view, Type::body, Palette::accent, this::innerPx);
        headline.setName("backup-headline");
        reason.setName("backup-reason");
        nothing.setName("backup-nothing");
        trouble.setName("backup-trouble");
        trouble.setVisible(false);
        add(trouble, "growx, hidemode 3");
        Stack all = new Stack();
        all.add(headline, "growx");
        all.add(reason, "growx");
        all.add(nothing, "growx");
        all.add(note("Leave empty what you do not know: a usual value is assumed then, and listed as such."), "growx");
        all.add(parts, "growx");
        all.add(note(CODES), "growx, gaptop " + view.px(8));
        add(Side.scrolling(all), "grow, push, hmin 0");
        view.follow(this, this::tell);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private Paragraph note(String text) {
        Paragraph note = new Paragraph(view(), Type::body, Palette::softInk, this::contentPx);
        note.setText(text);
        return note;
    }

    private void tell() {
        Optional<Glance> glance = view().plan()
                .map(plan -> new Glances(plan, view().desk().age(), view().quantities()).of(Subject.BACKUP));
        headline.setText(glance.map(Glance::headline).orElse("…"));
        headline.inked(view().desk().isCurrent() ? Palette::ink : Palette::free);
        reason.setText(glance.map(Glance::reason).orElse("being planned"));
        Optional<Finding> none = view().plan().map(Plan::findings).orElse(List.of()).stream()
                .filter(finding -> finding.code() == Code.NO_BACKUP)
                .findFirst();
        nothing.setText(none.map(finding -> view().sentences().says(finding) + " "
                        + view().sentences().mend(finding))
                .orElse(""));
        nothing.setVisible(none.isPresent());
        List<BackupPart> now = new BackupParts(
                        view().desk().room(),
                        view().desk().shared().catalogue(),
                        this::take,
                        () -> side.draw(Blower.Role.STANDBY))
                .all();
        Shape shape = new Shape(
                now.stream().map(BackupPart::shape).toList(),
                view().desk().room().circuits(),
                contentPx(),
                view().px(100));
        if (!shown.equals(Optional.of(shape))) {
            boolean isFirst = shown.isEmpty();
            shown = Optional.of(shape);
            fill(now, isFirst);
        }
    }

    private void fill(List<BackupPart> now, boolean isFirst) {
        Set<String> before = names();
        Optional<String> held = held();
        parts.removeAll();
        for (BackupPart part : now) {
            parts.add(new JSeparator(), "growx, gaptop " + view().px(4));
            parts.add(new BackupSection(view(), part, this::contentPx, this::take), "growx");
        }
        parts.revalidate();
        parts.repaint();
        if (!isFirst && held.isPresent()) {
            focus(before, held.get());
        }
    }

    /** To the first field that is new, else to where the focus was, else to where one begins. */
    private void focus(Set<String> before, String held) {
        List<Component> fields = fields().toList();
        fields.stream()
                .filter(field -> !before.contains(field.getName()))
                .filter(field -> !(field instanceof JButton))
                .findFirst()
                .or(() -> fields.stream()
                        .filter(field -> held.equals(field.getName()))
                        .findFirst())
                .ifPresentOrElse(Component::requestFocusInWindow, this::takeFocus);
    }

    private void take(Attempt attempt) {
        String said = view().refused(attempt);
        trouble.setText(said);
        trouble.setVisible(!said.isEmpty());
    }

    /** The name of what has the focus in the parts. */
    private Optional<String> held() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return Optional.ofNullable(owner)
                .filter(that -> SwingUtilities.isDescendingFrom(that, parts))
                .map(that -> String.valueOf(that.getName()));
    }

    private Set<String> names() {
        return fields().map(field -> String.valueOf(field.getName())).collect(Collectors.toSet());
    }

    private Stream<Component> fields() {
        return inside(parts).filter(field -> field.isFocusable() && field.getName() != null);
    }

    private static Stream<Component> inside(Container holder) {
        return Stream.of(holder.getComponents())
                .flatMap(each -> each instanceof Container more
                        ? Stream.concat(Stream.of(each), inside(more))
                        : Stream.of(each));
    }

    /** To the first field of the first part; where there is none, to what adds one. */
    @Override
    void takeFocus() {
        List<Component> first = parts.getComponentCount() > 1 && parts.getComponent(1) instanceof Container part
                ? inside(part).filter(Component::isFocusable).toList()
                : List.of();
        first.stream()
                .filter(QuantityField.class::isInstance)
                .findFirst()
                .or(() -> first.stream().filter(JComboBox.class::isInstance).findFirst())
                .ifPresentOrElse(Component::requestFocusInWindow, super::takeFocus);
    }
}
