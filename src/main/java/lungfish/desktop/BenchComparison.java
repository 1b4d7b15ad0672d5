package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntSupplier;
import java.util.function.Predicate;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.drawing.CurvesPicture;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.report.BenchFigure;
import lungfish.report.BenchWords;
import net.miginfocom.swing.MigLayout;

/** Two or three blowers side by side: their curves on one picture, and every figure on a line, the best of each line marked. */
final class BenchComparison extends Stack {
    private static final int GAP = 12;
    private static final int NAMES = 122;

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient BooleanSupplier isCurrent;
    private final transient Consumer<BenchRow> take;

    /**
     * Nothing yet.
     *
     * @param isCurrent whether what is shown is of the room as it is now: only then something can be taken
     * @param take hears which one is taken
     */
    BenchComparison(View view, IntSupplier widthPx, BooleanSupplier isCurrent, Consumer<BenchRow> take) {
        this.isCurrent = isCurrent;
        this.view = view;
        this.widthPx = widthPx;
        this.take = take;
        setName("comparison");
        getAccessibleContext().setAccessibleName("Blowers side by side");
    }

    void show(BlowerBench bench, List<BenchRow> rows, Predicate<BenchRow> isTaken) {
        removeAll();
        List<CurvesPicture.Curve> curves = rows.stream()
                .map(row -> new CurvesPicture.Curve(
                        letter(rows.indexOf(row)),
                        row.candidate().fleet(),
                        row.candidate().tired()))
                .toList();
        add(new Painted(
                view,
                "The tired curves of " + names(rows) + ", what the room needs, and where each runs",
                widthPx,
                () -> CurvesPicture.height(view.look()),
                (area, look, g) -> CurvesPicture.paint(curves, bench.needed(), area, look, g),
                isCurrent));
        add(grid(bench, rows, isTaken));
        revalidate();
        repaint();
    }

    private static String letter(int at) {
        return String.valueOf((char) ('A' + at));
    }

    private static String names(List<BenchRow> rows) {
        return String.join(
                ", ", rows.stream().map(row -> row.candidate().kind().name()).toList());
    }

    private JPanel grid(BlowerBench bench, List<BenchRow> rows, Predicate<BenchRow> isTaken) {
        int columns = rows.size() + 1;
        JPanel grid = new JPanel(new MigLayout(
                "insets 0, fillx, wrap " + columns + ", gap " + view.px(GAP) + " " + view.px(3),
                "[fill]".repeat(columns)));
        grid.setOpaque(false);
        line(
                grid,
                "",
                rows,
                Type::label,
                Palette::ink,
                row -> letter(rows.indexOf(row)) + "  " + row.candidate().kind().name());
        BenchWords words = new BenchWords(bench, view.quantities());
        line(grid, "Why it stands here", rows, Type::body, Palette::softInk, words::reason);
        for (BenchFigure figure : BenchFigure.values()) {
            grid.add(new JSeparator(), "spanx, growx");
            figures(grid, figure, rows);
        }
        grid.add(new JSeparator(), "spanx, growx");
        grid.add(cell("", Type::body, Palette::ink, namesPx()));
        rows.forEach(row -> grid.add(taking(row, isTaken.test(row)), "growx 0"));
        return grid;
    }

    private void line(
            JPanel grid,
            String name,
            List<BenchRow> rows,
            Function<Type, Font> type,
            Function<Palette, Color> ink,
            Function<BenchRow, String> says) {
        heading(grid, name);
        rows.forEach(row -> figure(grid, name, row, cell(says.apply(row), type, ink, figurePx(rows))));
    }

    /** One figure of all; the best is marked by a star, a word and its ink. */
    private void figures(JPanel grid, BenchFigure figure, List<BenchRow> rows) {
        heading(grid, figure.title());
        for (BenchRow row : rows) {
            String shown = figure.show(row, view.quantities());
            Paragraph cell = figure.isBest(row, rows, view.quantities())
                    ? cell(shown + "  ★ best", Type::label, Palette::good, figurePx(rows))
                    : cell(shown, Type::body, Palette::ink, figurePx(rows));
            figure(grid, figure.title(), row, cell);
        }
    }

    private void heading(JPanel grid, String name) {
        grid.add(cell(name, Type::body, Palette::softInk, namesPx()), "growx, wmin 0, aligny top");
    }

    private static void figure(JPanel grid, String name, BenchRow row, Paragraph cell) {
        cell.setName(name + ", " + row.id());
        grid.add(cell, "growx, wmin 0, aligny top");
    }

    private int namesPx() {
        return Math.min(view.px(NAMES), widthPx.getAsInt() / 4);
    }

    private int figurePx(List<BenchRow> rows) {
        return (widthPx.getAsInt() - namesPx()) / rows.size() - view.px(GAP);
    }

    private Paragraph cell(String text, Function<Type, Font> type, Function<Palette, Color> ink, int px) {
        Paragraph cell = new Paragraph(view, type, isCurrent.getAsBoolean() ? ink : Palette::free, () -> px);
        cell.setText(text);
        return cell;
    }

    private JButton taking(BenchRow row, boolean isTaken) {
        JButton button = new JButton(isTaken ? "Taken" : "Take it");
        button.setName("take " + row.id());
        button.getAccessibleContext()
                .setAccessibleName(
                        (isTaken ? "Taken: " : "Take ") + row.candidate().kind().name());
        button.setEnabled(!isTaken && isCurrent.getAsBoolean());
        button.addActionListener(event -> take.accept(row));
        return button;
    }
}
