package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import lungfish.cost.CostAnswer;
import lungfish.drawing.AirPicture;
import lungfish.drawing.Look;
import lungfish.drawing.MoneyPicture;
import lungfish.drawing.NoisePicture;
import lungfish.drawing.Palette;
import lungfish.drawing.Pictures;
import lungfish.drawing.Type;
import lungfish.plan.Plan;
import lungfish.report.BesideRows;
import lungfish.report.BesideWords;
import lungfish.room.Blower;
import lungfish.today.Beside;
import lungfish.today.Verdict;
import net.miginfocom.swing.MigLayout;

/** Today's pumps beside the planned blower: whether to buy it, why, and every figure of both. */
final class TodaySheet extends SideSheet {
    /** Between the two columns. */
    private static final int GAP = 20;

    /** A column narrower than this is no column. */
    private static final int NARROW = 440;

    private final Side side;
    private final Stack stack = new Stack();
    private transient Optional<Told> told = Optional.empty();

    /** All that the sheet depends on: it is made anew only when some of it changes. */
    private record Told(Optional<Plan> plan, boolean isCurrent, Look look, int widthPx) {}

    TodaySheet(View view, Side side) {
        super(view, side, "Today and planned");
        this.side = side;
        add(Side.scrolling(stack), "grow, push, hmin 0");
        view.follow(this, this::tell);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private boolean isCurrent() {
        return view().desk().isCurrent();
    }

    /** What is of an older room is soft until the new figures are there. */
    private Function<Palette, Color> aged(Function<Palette, Color> ink) {
        return isCurrent() ? ink : Palette::free;
    }

    private void tell() {
        Told now = new Told(view().plan(), isCurrent(), view().look(), contentPx());
        if (told.equals(Optional.of(now))) {
            stack.repaint();
            return;
        }
        told = Optional.of(now);
        stack.removeAll();
        now.plan()
                .ifPresentOrElse(
                        plan -> tell(plan, Beside.of(plan)),
                        () -> paragraph(Type::body, Palette::softInk, "Being planned …", "growx"));
        stack.revalidate();
        stack.repaint();
    }

    private void tell(Plan plan, Beside beside) {
        BesideWords words = new BesideWords(plan, beside, view().quantities());
        paragraph(Type::headline, Palette::ink, words.headline(), "growx").setName("verdict");
        paragraph(Type::body, Palette::ink, words.because(), "growx").setName("because");
        if (beside.verdict() == Verdict.NO_PUMPS) {
            drawPumps();
            return;
        }
        reasons(words);
        plan.cost().filter(cost -> cost.today().isPresent()).ifPresent(this::money);
        pictures(plan, beside);
        figures(plan, beside);
    }

    private Paragraph paragraph(
            Function<Type, Font> type, Function<Palette, Color> ink, String text, String constraints) {
        Paragraph paragraph = new Paragraph(view(), type, aged(ink), this::contentPx);
        paragraph.setText(text);
        stack.add(paragraph, constraints);
        return paragraph;
    }

    /** Nobody can compare with pumps that are not drawn: here is what draws them. */
    private void drawPumps() {
        JButton draw = new JButton("Draw today's pumps");
        draw.setName("draw-pumps");
        draw.addActionListener(event -> side.draw(Blower.Role.TODAY));
        stack.add(draw, "growx 0, gaptop " + view().px(4));
    }

    private void reasons(BesideWords words) {
        JPanel both = columns();
        reasons(both, "For it", "+", words.reasons(true));
        reasons(both, "Against it", "−", words.reasons(false));
        if (both.getComponentCount() > 0) {
            stack.add(both, "growx, gaptop " + view().px(4));
        }
    }

    private void reasons(JPanel into, String title, String mark, List<String> reasons) {
        if (reasons.isEmpty()) {
            return;
        }
        JPanel column = new JPanel(new MigLayout("insets 0, fillx, wrap 2, gap 0 " + view().px(2), "[][grow, fill]"));
        column.setOpaque(false);
        Line name = Line.title(view(), title);
        column.add(name, "spanx 2, gapbottom " + view().px(2));
        for (String reason : reasons) {
            Line sign = new Line(view(), Type::label, aged(Palette::air));
            sign.setText(mark);
            Paragraph text = new Paragraph(view(), Type::body, aged(Palette::ink), () -> columnPx() - view().px(16));
            text.setText(reason);
            column.add(sign, "aligny top, wmin " + view().px(12));
            column.add(text, "growx, wmin 0");
        }
        into.add(column, "growx, aligny top, wmin 0");
    }

    /** Two columns where there is room for them, else one under the other. */
    private JPanel columns() {
        String wrap = isNarrow() ? "wrap 1" : "wrap 2";
        JPanel columns = new JPanel(new MigLayout(
                "insets 0, fillx, " + wrap + ", gap " + view().px(GAP) + " " + view().px(8),
                isNarrow() ? "[grow, fill]" : "[grow, fill, sg half][grow, fill, sg half]"));
        columns.setOpaque(false);
        return columns;
    }

    private boolean isNarrow() {
        return contentPx() < view().px(NARROW);
    }

    private int columnPx() {
        return isNarrow() ? contentPx() : (contentPx() - view().px(GAP)) / 2;
    }

    private void money(CostAnswer cost) {
        stack.add(Line.title(view(), "Money spent by the end of each year"), "growx, wmin 0, gaptop " + view().px(4));
        String says = "Money by year: small pumps and central blower";
        stack.add(
                new Painted(
                        view(),
                        says,
                        this::contentPx,
                        () -> MoneyPicture.height(view().look()),
                        (area, look, g) -> MoneyPicture.paint(cost, area, look, g),
                        this::isCurrent),
                "growx");
    }

    private void pictures(Plan plan, Beside beside) {
        JPanel both = columns();
        both.add(
                titled(
                        "Air at the outlets' depths",
                        AirPicture::height,
                        (area, look, g) -> AirPicture.paint(plan, beside, area, look, g)),
                "growx, wmin 0");
        String where =
                plan.planned().at().isEmpty() ? "the listener" : plan.planned().at();
        both.add(
                titled(
                        "Level at " + where,
                        NoisePicture::height,
                        (area, look, g) -> NoisePicture.paint(plan, area, look, g)),
                "growx, wmin 0");
        stack.add(both, "growx, gaptop " + view().px(4));
    }

    private JComponent titled(String title, ToDoubleFunction<Look> heightPx, Pictures.Painting painting) {
        JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, gap 0 " + view().px(4), "[grow, fill]"));
        panel.setOpaque(false);
        panel.add(Line.title(view(), title), "wmin 0");
        panel.add(
                new Painted(
                        view(),
                        title + ", today and planned",
                        this::columnPx,
                        () -> heightPx.applyAsDouble(view().look()),
                        painting,
                        this::isCurrent),
                "wmin 0");
        return panel;
    }

    private void figures(Plan plan, Beside beside) {
        FiguresGrid grid = new FiguresGrid(view(), this::contentPx, isCurrent());
        grid.heads("Small pumps", "Central blower");
        new BesideRows(plan, beside, view().quantities())
                .all()
                .forEach(row -> grid.row(row.name(), row.today(), row.planned()));
        stack.add(grid, "growx, gaptop " + view().px(4));
    }
}
