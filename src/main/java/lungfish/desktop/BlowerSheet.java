package lungfish.desktop;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import lungfish.catalogue.BlowerClass;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BlowerEdits;
import lungfish.edit.OwnBlowerEdits;
import lungfish.plan.Duty;
import lungfish.plan.Plan;
import lungfish.plan.Planner;
import lungfish.quantity.Dimension;
import lungfish.room.Blower;
import lungfish.room.Room;

/** The blower bench: all that could serve the room by the keeper's order of wishes, to be compared and taken. */
final class BlowerSheet extends SideSheet {
    /** What is asked in the background. */
    private record Asked(Room room) {}

    private final Side side;
    private final transient Later<Asked, Optional<BlowerBench>> bench;
    private final BenchList list;
    private final BenchHead head;
    private final Stack scrolled = new Stack();
    private final JScrollPane pane = Side.scrolling(scrolled);
    private final WishChips wishes;
    private final JPanel tools = row();
    private final JPanel buttons = row();
    private final BenchComparison comparison;
    private final JCheckBox mains = new JCheckBox("Only for this mains", true);
    private final JButton compare = new JButton("Compare");
    private final JButton take = new JButton("Take it");
    private final JButton letChoose = new JButton("Let the plan choose");
    private final JButton type = new JButton("From a data sheet…");
    private final JButton change = new JButton("Change…");
    private final JButton remove = new JButton("Remove");
    private final Paragraph stands;
    private boolean isComparing;
    private boolean isTight;

    BlowerSheet(View view, Side side) {
        super(view, side, "Choose the blower");
        this.side = side;
        this.list = new BenchList(view, this::contentPx, this::isCurrent, this::take, this::tellMarked);
        this.head = new BenchHead(view, list);
        this.wishes = new WishChips(view, this::innerPx);
        this.comparison = new BenchComparison(view, this::contentPx, this::isCurrent, this::take);
        this.stands = new Paragraph(view, Type::body, Palette::softInk, this::innerPx);
        this.bench = asking(
                (asked, progress) -> new Planner(view.desk().shared().catalogue())
                        .basis(asked.room())
                        .map(BlowerBench::of),
                this::tellBench);
        names();
        parts();
        view.follow(this, this::tell);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    /** Whether the order is that of the room as it is now: an older one is shown softly, and nothing of it is taken. */
    private boolean isCurrent() {
        return bench.isCurrent();
    }

    private void names() {
        stands.setName("stands");
        mains.setName("this-mains");
        mains.setOpaque(false);
        mains.addActionListener(event -> tellBench());
        compare.setName("compare");
        compare.addActionListener(event -> compare(!isComparing));
        take.setName("take");
        take.addActionListener(event -> list.selected().ifPresent(this::take));
        letChoose.setName("let-choose");
        letChoose.addActionListener(event -> view().desk().apply(BlowerEdits.letThePlanChoose()));
        type.setName("data-sheet");
        type.addActionListener(event -> side.open(new DataSheet(view(), side, Optional.empty())));
        change.setName("change-own");
        change.addActionListener(
                event -> own().ifPresent(kind -> side.open(new DataSheet(view(), side, Optional.of(kind)))));
        remove.setName("remove-own");
        remove.addActionListener(event -> own().ifPresent(kind -> view().desk().apply(OwnBlowerEdits.remove(kind))));
        list.addListSelectionListener(event -> tellButtons());
    }

    private void parts() {
        tools.add(mains);
        tools.add(compare);
        List.of(take, letChoose, type, change, remove).forEach(buttons::add);
        pane.setVerticalScrollBarPolicy(ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS);
        arrange();
    }

    /** Where text is large for the window all of it scrolls: a list of no height would be none. */
    private void arrange() {
        isTight = view().isTight();
        List.of(stands, wishes, tools, pane, buttons).forEach(this::remove);
        scrolled.removeAll();
        if (isTight) {
            List.of(stands, wishes, tools, buttons).forEach(scrolled::add);
            scrolled.add(shown());
            add(pane, "grow, push, hmin 0");
        } else {
            List.of(stands, wishes, tools).forEach(part -> add(part, "growx"));
            scrolled.add(shown());
            add(pane, "grow, push, hmin 0");
            add(buttons, "growx");
        }
        pane.setColumnHeaderView(isTight || isComparing ? null : head);
    }

    private JComponent shown() {
        return isComparing ? comparison : list;
    }

    private JPanel row() {
        JPanel row = new JPanel(new Wrapping(this::innerPx, view().px(6)));
        row.setOpaque(false);
        return row;
    }

    private void tell() {
        if (isTight != view().isTight()) {
            arrange();
        }
        bench.ask(new Asked(view().desk().room()));
        tellBench();
    }

    /** What is known now: the answer may be that to an older room. */
    private void tellBench() {
        Optional<BlowerBench> known = bench.answer().flatMap(answer -> answer);
        known.ifPresent(this::list);
        list.setBackground(view().look().palette().sheet());
        stands.setText(stands(known));
        stands.inked(known.isEmpty() || isCurrent() ? Palette::softInk : Palette::free);
        tellMarked();
        tellButtons();
        revalidate();
        repaint();
    }

    private void list(BlowerBench known) {
        List<BenchRow> rows = known.rows().stream()
                .filter(row -> !mains.isSelected() || row.candidate().suitsMains())
                .toList();
        boolean isFirstTime = list.bench().isEmpty();
        list.show(known, rows, taken());
        head.revalidate();
        if (isFirstTime) {
            chooseFirst();
        }
        mains.setText("Only for this mains"
                + (known.asked().mainsV().isPresent()
                        ? " (" + view().quantities().show(known.asked().mainsV().getAsDouble(), Dimension.VOLTAGE) + ")"
                        : ""));
    }

    private String stands(Optional<BlowerBench> known) {
        if (bench.trouble().isPresent()) {
            return bench.trouble().get().text();
        }
        if (known.isEmpty()) {
            return bench.isRunning()
                    ? "Being judged …"
                    : "The room cannot be solved yet, so no blower can be judged: see what must be mended first.";
        }
        return known.get().fitting() + " of " + known.get().ofThisMains()
                + " fit, tired and with devices due for cleaning. "
                + (isLeftToPlan() ? "The plan takes the first. " : "You have taken one. ")
                + "Order your wishes, what matters most first:";
    }

    private boolean isLeftToPlan() {
        return view().plan().flatMap(Plan::duty).map(Duty::recommended).orElse(true);
    }

    private Optional<BlowerClass> own() {
        return list.selected().filter(BenchRow::isOwn).map(row -> row.candidate()
                .kind());
    }

    private void tellButtons() {
        take.setEnabled(!isComparing
                && isCurrent()
                && list.selected().filter(row -> !isTaken(row)).isPresent());
        letChoose.setEnabled(!isLeftToPlan());
        change.setVisible(own().isPresent());
        remove.setVisible(own().isPresent());
    }

    private void tellMarked() {
        List<BenchRow> marked = list.marked();
        if (marked.size() < 2 && isComparing) {
            compare(false);
        }
        compare.setText(
                isComparing
                        ? "Back to the list"
                        : marked.size() < 2
                                ? "Compare: mark two or three"
                                : "Compare " + marked.size() + " side by side");
        compare.setEnabled(isComparing || marked.size() >= 2);
        if (isComparing) {
            list.bench().ifPresent(known -> comparison.show(known, marked, this::isTaken));
        }
    }

    private void compare(boolean isWished) {
        isComparing = isWished;
        tellMarked();
        tellButtons();
        arrange();
        compare.requestFocusInWindow();
    }

    /** Whether the current plan runs on it. */
    private boolean isTaken(BenchRow row) {
        return taken().contains(row.id());
    }

    private Set<String> taken() {
        return view().plan().flatMap(Plan::duty).stream()
                .flatMap(duty -> duty.candidate().fleet().placed().stream())
                .map(placed -> placed.machine().kind().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private void take(BenchRow row) {
        if (isCurrent()) {
            view().desk().apply(BlowerEdits.choose(row.candidate().kind()));
        }
    }

    @Override
    void takeFocus() {
        list.requestFocusInWindow();
        chooseFirst();
    }

    private void chooseFirst() {
        if (list.isSelectionEmpty() && list.getModel().getSize() > 0) {
            list.setSelectedIndex(0);
        }
    }

    /** What the room says of its bleed. */
    static Blower.Bleed bleed(View view) {
        List<Blower> planned = view.desk().room().blowers(Blower.Role.PLANNED);
        return planned.isEmpty() ? new Blower.Unsaid() : planned.get(0).bleed();
    }
}
