package lungfish.desktop;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import lungfish.document.Document;
import lungfish.document.Part;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import net.miginfocom.swing.MigLayout;

/** Sections of a document on a sheet of the window: the words that stand on paper, with boxes that can be ticked. */
final class DocumentView extends JPanel {
    private static final int GAP = 6;
    private static final int WIDE_GAP = 16;
    private static final double FACT_SHARE = 0.36;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient BiConsumer<String, Optional<LocalDate>> ticks;
    private final transient Map<String, StepRow> rows = new HashMap<>();

    /**
     * Nothing yet.
     *
     * @param ticks takes the key of a step, and the day on which it was done; empty: not done after all
     */
    DocumentView(View view, IntSupplier widthPx, BiConsumer<String, Optional<LocalDate>> ticks) {
        super(new MigLayout("insets 0, fillx, wrap 1, gap 0 " + view.px(GAP), "[grow, fill]"));
        this.view = view;
        this.widthPx = widthPx;
        this.ticks = ticks;
        setOpaque(false);
    }

    /** Shows these from now on; what had the focus has it again, where it is still there. */
    void show(List<Document.Section> sections) {
        Optional<String> held = held();
        removeAll();
        rows.clear();
        sections.forEach(this::section);
        revalidate();
        repaint();
        held.flatMap(name ->
                        inside(this).filter(each -> name.equals(each.getName())).findFirst())
                .ifPresent(Component::requestFocusInWindow);
    }

    /** Shows that a step was done on a day, or not after all; all else stays as it is. */
    void tick(Part.Step step) {
        Optional.ofNullable(rows.get(step.key())).ifPresent(row -> row.tell(step));
    }

    private Optional<String> held() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return Optional.ofNullable(owner)
                .filter(that -> SwingUtilities.isDescendingFrom(that, this))
                .map(Component::getName);
    }

    private static Stream<Component> inside(Container holder) {
        return Stream.of(holder.getComponents())
                .flatMap(each -> each instanceof Container more
                        ? Stream.concat(Stream.of(each), inside(more))
                        : Stream.of(each));
    }

    private void section(Document.Section section) {
        Line title = new Line(view, Type::label, Palette::ink);
        title.setText(section.title());
        add(title, "gaptop " + view.px(WIDE_GAP) + ", wmin 0");
        section.parts().forEach(this::part);
    }

    private void part(Part part) {
        if (part instanceof Part.Paragraph paragraph) {
            add(text(paragraph.text(), Type::body, Palette::ink, widthPx), "wmin 0");
        } else if (part instanceof Part.Caution caution) {
            add(text("! " + caution.text(), Type::body, Palette::softInk, widthPx), "wmin 0");
        } else if (part instanceof Part.Facts facts) {
            facts.facts().forEach(this::fact);
        } else if (part instanceof Part.Grid grid) {
            grid(grid);
        } else if (part instanceof Part.Checklist list) {
            list.steps().forEach(this::step);
        }
    }

    private void fact(Part.Fact fact) {
        JPanel row =
                new JPanel(new MigLayout("insets 0, fillx, wrap 2, gap " + view.px(GAP) + " 0", "[fill][grow, fill]"));
        row.setOpaque(false);
        int what = (int) (FACT_SHARE * widthPx.getAsInt());
        row.add(text(fact.what(), Type::body, Palette::softInk, () -> what), "wmin 0, aligny top");
        row.add(
                text(fact.said(), Type::body, Palette::ink, () -> widthPx.getAsInt() - what - view.px(GAP)),
                "wmin 0, aligny top");
        add(row, "wmin 0");
    }

    private void grid(Part.Grid grid) {
        if (!grid.title().isEmpty()) {
            add(Line.title(view, grid.title()), "wmin 0, gaptop " + view.px(GAP));
        }
        PlainTable table = new PlainTable(view, grid);
        add(table.header(), "wmin 0");
        add(table, "wmin 0");
    }

    private void step(Part.Step step) {
        StepRow row = new StepRow(view, widthPx, ticks);
        row.tell(step);
        rows.put(step.key(), row);
        add(row, "wmin 0");
    }

    private Paragraph text(String text, Function<Type, Font> type, Function<Palette, Color> ink, IntSupplier px) {
        Paragraph paragraph = new Paragraph(view, type, ink, px);
        paragraph.setText(text);
        return paragraph;
    }
}
