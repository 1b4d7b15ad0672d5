package lungfish.desktop;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import lungfish.catalogue.BlowerClass;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.desk.Later;
import lungfish.drawing.CurvesPicture;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.BlowerDraft;
import lungfish.edit.BlowerSlot;
import lungfish.edit.DraftLook;
import lungfish.edit.OwnBlowerEdits;
import lungfish.plan.Planner;
import lungfish.report.BenchWords;
import lungfish.report.Sentences;
import lungfish.room.Room;
import net.miginfocom.swing.MigLayout;

/** A blower typed from its data sheet: checked as it is typed, and drawn beside what the room needs. */
final class DataSheet extends SideSheet {
    private static final int GAP = 12;
    private static final int NARROW = 460;
    private static final int TABLE_HIGH = 216;

    /** What is asked in the background: the room with the blower as it is typed so far. */
    private record Tried(Room room, BlowerClass kind) {}

    private final Side side;
    private final transient Later<Tried, Optional<BlowerBench>> later;
    private final JTextField name = new JTextField();
    private final Choice<BlowerClass.Kind> kind = new Choice<>("Kind of machine");
    private final PointsTable points;
    private final Map<BlowerSlot, DataField> fields = new EnumMap<>(BlowerSlot.class);
    private final Paragraph curveTrouble;
    private final Paragraph verdict;
    private final JButton keep = new JButton();
    private final JButton again = new JButton("Start over");
    private final transient BlowerDraft untyped;
    private transient BlowerDraft draft;
    private transient DraftLook look;
    private boolean isTelling;

    DataSheet(View view, Side side, Optional<BlowerClass> before) {
        super(view, side, before.isPresent() ? "Change a blower of your own" : "A blower from its data sheet");
        this.side = side;
        this.untyped = before.map(own -> BlowerDraft.of(own, view.quantities())).orElseGet(BlowerDraft::empty);
        this.draft = side.unfinished(before).orElse(untyped);
        this.look = looked();
        this.points = new PointsTable(view, this::change);
        this.curveTrouble = new Paragraph(view, Type::body, Palette::accent, this::contentPx);
        this.verdict = new Paragraph(view, Type::body, Palette::ink, this::contentPx);
        this.later = asking(
                (tried, progress) -> new Planner(view.desk().shared().catalogue())
                        .basis(OwnBlowerEdits.keep(tried.kind(), true).of(tried.room()))
                        .map(BlowerBench::of),
                this::tellVerdict);
        names();
        add(Side.scrolling(form()), "grow, push, hmin 0");
        add(keep, "split 2, growx 0");
        add(again, "growx 0");
        view.follow(this, this::tell);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private void names() {
        name.setName("blower-name");
        name.getAccessibleContext().setAccessibleName("Name");
        name.setText(draft.name());
        Typing.on(name, () -> change(known -> known.named(name.getText())));
        kind.offer(List.of(BlowerClass.Kind.values()), DataSheet::word, draft.kind()::equals);
        kind.addActionListener(event -> kind.chosen().ifPresent(that -> change(known -> known.of(that))));
        curveTrouble.setName("curve-trouble");
        verdict.setName("draft-verdict");
        keep.setName("keep-blower");
        keep.setText(draft.before().isPresent() ? "Keep the changes" : "Put it on the bench");
        keep.addActionListener(event -> keep());
        again.setName("start-over");
        again.addActionListener(event -> startOver());
    }

    /** "LINEAR_PISTON" is "Linear piston". */
    private static String word(BlowerClass.Kind kind) {
        return Sentences.capital(kind.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private Stack form() {
        Stack stack = new Stack();
        JPanel called = columns(2);
        called.add(Line.over(view(), "Name", name), "wmin 0");
        called.add(Line.over(view(), "Kind of machine", kind), "wmin 0");
        stack.add(called);
        stack.add(curve());
        stack.add(curveTrouble, "hidemode 3");
        JPanel slots = columns(contentPx() < view().px(NARROW) ? 2 : 3);
        for (BlowerSlot slot : BlowerSlot.values()) {
            DataField field =
                    new DataField(view(), slot, text -> change(known -> known.with(slot, text)), this::fieldPx);
            fields.put(slot, field);
            slots.add(field, "wmin 0, aligny top");
        }
        stack.add(slots);
        stack.add(verdict);
        return stack;
    }

    private int fieldPx() {
        int many = contentPx() < view().px(NARROW) ? 2 : 3;
        return (contentPx() - (many - 1) * view().px(GAP)) / many;
    }

    /** The points beside their picture; where it is narrow, over it. */
    private JPanel curve() {
        boolean isNarrow = contentPx() < view().px(NARROW);
        JPanel both = columns(isNarrow ? 1 : 2);
        JScrollPane pane = scrolling(points);
        pane.setColumnHeaderView(points.getTableHeader());
        JPanel typed = new JPanel(new MigLayout("insets 0, fill, wrap 1, gap 0 " + view().px(2), "[grow, fill]"));
        typed.setOpaque(false);
        typed.add(Line.title(view(), "Points of its curve, from open air up; paste works"), "wmin 0");
        typed.add(pane, "grow, push, wmin 0, h " + view().px(TABLE_HIGH) + "!");
        both.add(typed, "wmin 0");
        both.add(
                new Painted(
                        view(),
                        "Its curve as typed, and what the room needs",
                        () -> isNarrow ? contentPx() : (contentPx() - view().px(GAP)) / 2,
                        () -> view().px(TABLE_HIGH),
                        (area, look, g) -> drawn().ifPresent(bench -> row(bench)
                                .ifPresent(row -> CurvesPicture.paint(
                                        List.of(new CurvesPicture.Curve(
                                                "",
                                                row.candidate().fleet(),
                                                row.candidate().tired())),
                                        bench.needed(),
                                        area,
                                        look,
                                        g))),
                        later::isCurrent),
                "wmin 0, aligny bottom");
        return both;
    }

    private JPanel columns(int many) {
        JPanel columns = new JPanel(new MigLayout(
                "insets 0, fillx, wrap " + many + ", gap " + view().px(GAP) + " " + view().px(8),
                "[grow, fill, sg one]".repeat(many)));
        columns.setOpaque(false);
        return columns;
    }

    private DraftLook looked() {
        return draft.look(view().desk().room(), view().desk().shared().catalogue(), view().quantities());
    }

    private void change(UnaryOperator<BlowerDraft> change) {
        if (!isTelling) {
            draft = change.apply(draft);
            tell();
        }
    }

    private void tell() {
        isTelling = true;
        look = looked();
        points.show(draft, look);
        fields.forEach((slot, field) -> field.tell(draft, look));
        String curve = look.complaints().stream()
                .filter(each -> each.where().isOfCurve())
                .map(DraftLook.Complaint::says)
                .findFirst()
                .orElse("");
        curveTrouble.setText(curve);
        curveTrouble.setVisible(!curve.isEmpty());
        keep.setEnabled(look.done().isPresent());
        again.setEnabled(!draft.equals(untyped));
        isTelling = false;
        look.curve().ifPresent(drawn -> later.ask(new Tried(view().desk().room(), drawn)));
        tellVerdict();
    }

    private Optional<BlowerBench> drawn() {
        return look.curve().flatMap(curve -> later.answer().flatMap(answer -> answer));
    }

    private Optional<BenchRow> row(BlowerBench bench) {
        return look.curve().flatMap(curve -> bench.row(curve.id()));
    }

    private void tellVerdict() {
        verdict.setText(says());
        revalidate();
        repaint();
    }

    private String says() {
        if (look.done().isEmpty()) {
            int open = look.complaints().size();
            return (open == 1 ? "One thing is" : open + " things are")
                    + " still to say or to mend before it can stand on the bench.";
        }
        if (later.isRunning()) {
            return "Being judged …";
        }
        return drawn().flatMap(bench -> row(bench)
                        .map(row -> "In this room it " + BenchWords.verdict(row) + ": "
                                + new BenchWords(bench, view().quantities()).reason(row) + "."))
                .orElse("The room cannot be solved yet; it can stand on the bench all the same.");
    }

    private void keep() {
        look.done().ifPresent(own -> {
            view().desk().apply(OwnBlowerEdits.keep(own, draft.before().isEmpty()));
            draft = untyped;
            side.ask(Question.BLOWERS);
        });
    }

    /** The sheet as it was before anything was typed. */
    private void startOver() {
        draft = untyped;
        side.open(new DataSheet(view(), side, untyped.before()));
    }

    /** What is typed and not kept is there again when the sheet is opened again. */
    @Override
    void left() {
        super.left();
        side.unfinished(untyped.before(), Optional.of(draft).filter(typed -> !typed.equals(untyped)));
    }

    @Override
    void takeFocus() {
        name.requestFocusInWindow();
    }
}
