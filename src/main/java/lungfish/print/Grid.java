package lungfish.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table with a heading: words begin at the left of their column, figures end at its right. Cells that are too long are
 * shortened, and say so.
 *
 * @param rows a cell for each column
 */
record Grid(List<Heading> headings, List<List<String>> rows, Lettering head, Lettering cell) implements Block {
    private static final double GAP_PT = 7;
    private static final double ABOVE_RULE = 0.45; // of the size of the letters, below them and above the next
    private static final double RULE_PT = 0.4;

    Grid {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /**
     * A column.
     *
     * @param share of what is left by those that are as wide as their cells; 0: one of those
     */
    record Heading(String text, boolean isFigure, double share) {
        static Heading words(String text, double share) {
            return new Heading(text, false, share);
        }

        static Heading mark() {
            return new Heading("", false, 0);
        }

        static Heading figures(String text) {
            return new Heading(text, true, 0);
        }
    }

    @Override
    public Laid at(double x, double y, double widthPt) {
        List<Mark> marks = new ArrayList<>();
        List<Double> widths = widths(widthPt);
        double baseline = y + head.capitalsPt();
        row(headings.stream().map(Heading::text).toList(), head, x, baseline, widths, marks);
        double ruleWidthPt = 2.5 * RULE_PT;
        for (List<String> row : rows) {
            double rule = baseline + ABOVE_RULE * cell.sizePt();
            marks.add(new Mark.Rule(x, rule, x + widthPt, rule, ruleWidthPt));
            baseline = rule + ABOVE_RULE * cell.sizePt() + cell.capitalsPt();
            row(row, cell, x, baseline, widths, marks);
            ruleWidthPt = RULE_PT;
        }
        return new Laid(baseline - y, marks);
    }

    private void row(
            List<String> texts, Lettering lettering, double x, double baseline, List<Double> widths, List<Mark> marks) {
        double from = x;
        for (int i = 0; i < headings.size(); i++) {
            double wide = widths.get(i);
            String text = lettering.fitting(texts.get(i), wide);
            double indent = headings.get(i).isFigure() ? wide - lettering.width(text) : 0;
            if (!text.isEmpty()) {
                marks.add(new Mark.Words(text, lettering, from + indent, baseline, false));
            }
            from += wide + GAP_PT;
        }
    }

    private List<Double> widths(double widthPt) {
        List<Double> own =
                IntStream.range(0, headings.size()).mapToObj(this::ownWidth).toList();
        double fixed = own.stream().mapToDouble(Double::doubleValue).sum();
        double shares = headings.stream().mapToDouble(Heading::share).sum();
        double left = widthPt - fixed - GAP_PT * (headings.size() - 1);
        return IntStream.range(0, headings.size())
                .mapToObj(i -> headings.get(i).share() == 0
                        ? own.get(i)
                        : left * headings.get(i).share() / shares)
                .toList();
    }

    private double ownWidth(int column) {
        Heading heading = headings.get(column);
        double cells = rows.stream()
                .mapToDouble(row -> cell.width(row.get(column)))
                .max()
                .orElse(0);
        return heading.share() > 0 ? 0 : Math.max(head.width(heading.text()), cells);
    }
}
