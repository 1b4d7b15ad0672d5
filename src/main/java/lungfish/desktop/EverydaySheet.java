package lungfish.desktop;

import java.awt.Font;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import lungfish.desk.Later;
import lungfish.drawing.Palette;
import lungfish.drawing.Shown;
import lungfish.drawing.Type;
import lungfish.everyday.Disturbance.Kind;
import lungfish.everyday.Disturbed;
import lungfish.everyday.Everyday;
import lungfish.everyday.Moved;
import lungfish.plan.Plan;
import lungfish.reason.PartId;
import lungfish.report.EverydayAdvice;
import lungfish.report.EverydayWords;
import lungfish.room.OutletId;

/**
 * What the others do when some outlets are shut and no other valve is touched: retune or not, and what the bleed could do
 * instead. It follows the room, and the trial that is shown.
 */
final class EverydaySheet extends SideSheet {
    private final transient Set<OutletId> shut;
    private final transient Consumer<PartId> leads;
    private final transient Later<Asked, Optional<Disturbed>> later;
    private final Stack stack = new Stack();
    private final Paragraph verdict;
    private final Paragraph because;
    private final Paragraph blower;
    private final Paragraph instead;
    private final Paragraph trial;
    private final DefaultListModel<Moved> others = new DefaultListModel<>();
    private final JList<Moved> list = new JList<>(others);
    private final MovedCell cell;
    private boolean isAwaited;

    /** All that the answer depends on. */
    private record Asked(Plan plan, Shown shown, Set<OutletId> shut) {}

    /**
     * A sheet.
     *
     * @param shut the outlets that are shut
     * @param leads leads to one of the others
     */
    EverydaySheet(View view, Side side, Set<OutletId> shut, Consumer<PartId> leads) {
        super(view, side, "What if these are shut?");
        this.shut = Set.copyOf(shut);
        this.leads = leads;
        verdict = paragraph(Type::headline, "closing-verdict");
        because = paragraph(Type::body, "closing-because");
        blower = paragraph(Type::body, "closing-blower");
        instead = paragraph(Type::body, "closing-instead");
        trial = new Paragraph(view, Type::label, Palette::softInk, this::contentPx);
        stack.add(trial, "growx");
        cell = new MovedCell(view, this::contentPx, this::isCurrent);
        otherList();
        stack.add(list, "growx, wmin 0");
        add(Side.scrolling(stack), "grow, push, hmin 0");
        later = asking((asked, progress) -> answer(asked), this::said);
        view.follow(this, this::tell);
    }

    /** Large text gets the room of a table. */
    @Override
    int widthPx() {
        return view().isTight() ? view().wideSidePx() : view().sidePx();
    }

    private Paragraph paragraph(Function<Type, Font> type, String name) {
        Paragraph paragraph = new Paragraph(view(), type, Palette::ink, this::contentPx);
        paragraph.setName(name);
        stack.add(paragraph, "growx");
        return paragraph;
    }

    private void otherList() {
        list.setName("closing-others");
        list.getAccessibleContext().setAccessibleName("The other outlets, the most changed first");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(cell);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                lead();
            }
        });
        Keys.bind(list, "ENTER", this::lead);
    }

    private void lead() {
        Moved chosen = list.getSelectedValue();
        if (chosen != null) {
            leads.accept(chosen.need().id().part());
        }
    }

    private Optional<Disturbed> answer(Asked asked) {
        return asked.plan()
                .trials()
                .flatMap(trials -> Everyday.of(
                        asked.plan(),
                        asked.shown().of(trials),
                        Kind.SHUT,
                        asked.shut(),
                        view().desk().shared().catalogue()));
    }

    /** The question holds a plan, which may itself be that of an older room. */
    private boolean isCurrent() {
        return later.isCurrent() && view().desk().isCurrent();
    }

    private void tell() {
        view().plan().ifPresent(plan -> later.ask(new Asked(plan, view().shown(), shut)));
        said();
    }

    /** Says the newest answer; while it is not that of the room as it is now, softly. */
    private void said() {
        Optional<Disturbed> answer = later.answer().flatMap(found -> found);
        list.setBackground(view().look().palette().sheet());
        trial.setText(view().shown().words() + "; the most changed first");
        answer.ifPresentOrElse(this::say, this::sayNothing);
        boolean isOld = !isCurrent();
        for (Paragraph each : List.of(verdict, because, blower, instead)) {
            each.inked(isOld ? Palette::free : Palette::ink);
        }
        revalidate();
        repaint();
    }

    private void say(Disturbed closing) {
        EverydayWords words = new EverydayWords(closing, view().quantities(), view().names());
        verdict.setText(words.headline());
        because.setText(words.because());
        blower.setText(words.pressure());
        instead.setText(String.join("\n", new EverydayAdvice(closing, view().quantities(), view().names()).says()));
        cell.says(words);
        if (!List.of(others.toArray()).equals(closing.others())) {
            others.clear();
            others.addAll(closing.others());
        }
        leadIn();
    }

    private void sayNothing() {
        others.clear();
        blower.setText("");
        instead.setVisible(false);
        verdict.setText(later.isRunning() ? "…" : shut.isEmpty() ? "Nothing to shut" : "Not to be told");
        because.setText(
                later.isRunning()
                        ? "being worked out"
                        : shut.isEmpty()
                                ? "Nothing that is chosen has an outlet in place. Choose outlets, tanks, shelves or racks; or"
                                        + " nothing at all: then those are meant that run only sometimes."
                                : "The room cannot be solved: see what must be mended first.");
    }

    /** The sheet was given the focus before there was an answer to take it. */
    private void leadIn() {
        if (isAwaited && !others.isEmpty()) {
            isAwaited = false;
            takeFocus();
        }
    }

    @Override
    void takeFocus() {
        if (others.isEmpty()) {
            isAwaited = true;
            super.takeFocus();
        } else {
            list.requestFocusInWindow();
            list.setSelectedIndex(Math.max(0, list.getSelectedIndex()));
        }
    }
}
