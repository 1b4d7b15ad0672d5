package lungfish.desktop;

import java.awt.Component;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Attempt;
import lungfish.plan.Plan;
import lungfish.reason.Finding;
import lungfish.reason.Severity;
import lungfish.report.Sentences;
import net.miginfocom.swing.MigLayout;

/** One kind of thing that keeps the air on: those that there are with their fields, what adds one, and what is found of it. */
final class BackupSection extends JPanel {
    private static final int FIELD = 180;
    private static final int KINDS = 290;

    /** Where it is narrower, what adds something stands under the title. */
    private static final int NARROW = 560;

    private final transient View view;
    private final transient BackupPart part;
    private final transient IntSupplier widthPx;
    private final transient Consumer<Attempt> does;
    private final Paragraph wrong;
    private final Paragraph mind;

    BackupSection(View view, BackupPart part, IntSupplier widthPx, Consumer<Attempt> does) {
        super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gap 0 " + view.px(2), "[grow, fill]"));
        this.view = view;
        this.part = part;
        this.widthPx = widthPx;
        this.does = does;
        this.wrong = new Paragraph(view, Type::body, Palette::accent, widthPx);
        this.mind = new Paragraph(view, Type::body, Palette::softInk, widthPx);
        setOpaque(false);
        getAccessibleContext().setAccessibleName(part.title());
        wrong.setName("wrong: " + part.title());
        mind.setName("mind: " + part.title());
        head();
        part.things().forEach(this::thing);
        add(wrong, "growx");
        add(mind, "growx");
        view.follow(this, this::tell);
    }

    /** Its title; beside it what adds one, or takes away what there is but once. */
    private void head() {
        Line title = new Line(view, Type::label, Palette::ink);
        title.setText(part.title());
        List<Component> beside = new ArrayList<>();
        part.adding().ifPresent(adding -> beside.addAll(adding(adding)));
        part.things().stream().filter(thing -> thing.name().isEmpty()).forEach(thing -> beside.addAll(remove(thing)));
        boolean isBelow = beside.size() > 1 && widthPx.getAsInt() < view.px(NARROW);
        add(row(title, isBelow ? List.of() : beside), "growx");
        if (part.things().isEmpty() && !part.says().isEmpty()) {
            Paragraph none = new Paragraph(view, Type::body, Palette::softInk, widthPx);
            none.setText(part.says());
            add(none, "growx");
        }
        if (isBelow) {
            add(row(beside.get(0), beside.subList(1, beside.size())), "growx");
        }
    }

    /** What comes first takes the room that the others leave. */
    private JPanel row(Component first, List<Component> others) {
        JPanel row = new JPanel(new MigLayout(
                "insets 0, fillx, gap " + view.px(8) + " 0", "[grow, fill]" + "[]".repeat(others.size())));
        row.setOpaque(false);
        row.add(first, "wmin 0, aligny center");
        others.forEach(each ->
                row.add(each, each instanceof Choice ? "wmin 0, wmax " + view.px(KINDS) : "growx 0, aligny center"));
        return row;
    }

    private List<Component> adding(BackupPart.Adding adding) {
        JButton button = new JButton(adding.words());
        button.setName(adding.words());
        if (adding.kinds().size() == 1) {
            button.addActionListener(event -> adding.kinds().get(0).thing().run());
            return List.of(button);
        }
        Choice<Runnable> kinds = new Choice<>(adding.words() + ", of which kind");
        adding.kinds().forEach(kinds::addItem);
        button.addActionListener(event -> kinds.chosen().ifPresent(Runnable::run));
        return List.of(kinds, button);
    }

    private void thing(BackupPart.Thing thing) {
        PropertyGrid grid = new PropertyGrid(view, widthPx);
        grid.fill(thing.fields(), thing.called(part.title()), Math.max(1, widthPx.getAsInt() / view.px(FIELD)));
        if (!thing.name().isEmpty()) {
            add(row(Line.title(view, thing.name()), remove(thing)), "growx, gaptop " + view.px(4));
        }
        add(grid, "growx, wmin 0");
    }

    private List<Component> remove(BackupPart.Thing thing) {
        return thing.remove().stream()
                .<Component>map(remove -> {
                    String name = "Remove: " + thing.called(part.title());
                    JButton button = new JButton("Remove");
                    button.setName(name);
                    button.getAccessibleContext().setAccessibleName(name);
                    button.addActionListener(
                            event -> does.accept(remove.apply(view.desk().room())));
                    return button;
                })
                .toList();
    }

    /** What the plan finds of it: first what is worth mending, then what is to be minded. */
    private void tell() {
        List<Finding> found = view.plan().map(Plan::findings).orElse(List.of()).stream()
                .filter(finding -> part.found().contains(finding.code()))
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
        say(wrong, found.stream().filter(BackupSection::isWrong).toList());
        say(mind, found.stream().filter(finding -> !isWrong(finding)).toList());
    }

    private static boolean isWrong(Finding finding) {
        return finding.severity() == Severity.BLOCKING || finding.severity() == Severity.WARNING;
    }

    private void say(Paragraph into, List<Finding> findings) {
        Sentences sentences = view.sentences();
        String text = findings.stream()
                .map(finding -> Sentences.capital(FindingCell.word(finding.severity())) + ": " + sentences.says(finding)
                        + " " + sentences.mend(finding))
                .distinct()
                .collect(Collectors.joining("\n"));
        into.setText(text);
        into.setVisible(!text.isEmpty());
    }
}
