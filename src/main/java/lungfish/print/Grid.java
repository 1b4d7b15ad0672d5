package lungfish.print;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table with a heading: words begin at the left of their column, figures end at its right. Words that are too long
 * go on in a second line; where that is not enough, the line says so.
 *
 * @param rows a cell for each column
 * @param mostLines of a cell
 * @param endsInTotals whether the last row adds up the others
 */
record Grid(
        List<Heading> headings,
        List<List<String>> rows,
        Lettering head,
        Lettering cell,
        int mostLines,
        boolean endsInTotals)
        implements Block {
    private static final double GAP_PT = 7;
    private static final double SLACK_PT = 0.01; // a cell is as wide as the widest of them
    private static final int MOST_LINES = 2;
    private static final double THICK = 2.5; // times the rule between rows
    private static final double MOST_WORDS =
            8; // sizes, times the lines that a cell may have: what is longer goes on below
    private static final double WIDEST_WORDS = 34; // sizes
    private static final double ABOVE_RULE = 0.45; // of the size of the letters, below them and above the next
    private static final double RULE_PT = 0.4;

    Grid {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** A column. Columns of words share what figures and marks leave, by what they hold. */
    record Heading(String text, Holds holds) {
        static Heading words(String text) {
            return new Heading(text, Holds.WORDS);
        }

        static Heading mark() {
            return new Heading("", Holds.MARKS);
        }

        static Heading figures(String text) {
            return new Heading(text, Holds.FIGURES);
        }
    }

    /** What a column holds. */
    enum Holds {
        WORDS,
        MARKS,
        FIGURES
    }

    /** On a card: short cells, nothing to add up. */
    Grid(List<Heading> headings, List<List<String>> rows, Lettering head, Lettering cell) {
        this(headings, rows, head, cell, MOST_LINES, false);
    }

    @Override
    public Laid at(double x, double y, double widthPt) {
        return part(0, rows.size()).at(x, y, widthPt);
    }

    /** The heading over some of the rows; columns are as wide as in the whole. */
    Block part(int from, int to) {
        return (x, y, widthPt) -> {
            List<Double> widths = widths(widthPt);
            List<Mark> marks = new ArrayList<>();
            double bottom = row(headings.stream().map(Heading::text).toList(), head, x, y, widths, marks);
            for (int i = from; i < to; i++) {
                boolean isTotals = endsInTotals && i == rows.size() - 1;
                double rule = bottom + ABOVE_RULE * cell.sizePt();
                marks.add(new Mark.Rule(x, rule, x + widthPt, rule, i == from || isTotals ? THICK * RULE_PT : RULE_PT));
                double top = rule + ABOVE_RULE * cell.sizePt();
                bottom = row(rows.get(i), isTotals ? head : cell, x, top, widths, marks);
            }
            return new Laid(bottom - y, marks);
        };
    }

    /** Lays the cells from a top, and tells the lowest base line. */
    private double row(
            List<String> texts, Lettering lettering, double x, double top, List<Double> widths, List<Mark> marks) {
        double from = x;
        double high = lettering.capitalsPt();
        for (int i = 0; i < headings.size(); i++) {
            double wide = widths.get(i);
            double indent = headings.get(i).holds() == Holds.FIGURES ? wide - lettering.width(texts.get(i)) : 0;
            Laid laid = new Text(texts.get(i), lettering, mostLines).at(from + indent, top, wide + SLACK_PT);
            marks.addAll(laid.marks());
            high = Math.max(high, laid.heightPt());
            from += wide + GAP_PT;
        }
        return top + high;
    }

    /** Figures have the width that they need; words share the rest, each at least as wide as its longest word. */
    private List<Double> widths(double widthPt) {
        double[] own =
                IntStream.range(0, headings.size()).mapToDouble(this::ownWidth).toArray();
        double[] least = IntStream.range(0, headings.size())
                .mapToDouble(i -> isWords(i) ? Math.min(own[i], longestWord(i)) : own[i])
                .toArray();
        double gaps = GAP_PT * (headings.size() - 1);
        double free = widthPt - gaps - DoubleStream.of(least).sum();
        double wanted = DoubleStream.of(own).sum() - DoubleStream.of(least).sum();
        long words = IntStream.range(0, own.length).filter(this::isWords).count();
        return IntStream.range(0, own.length)
                .mapToObj(i -> least[i] + (isWords(i) ? share(own[i] - least[i], wanted, free, words) : 0))
                .toList();
    }

    private static double share(double wants, double wanted, double free, long words) {
        return wanted > 0 && free > 0 ? free * wants / wanted : free / words;
    }

    private double longestWord(int column) {
        Stream<String> cells = Stream.concat(
                Stream.of(headings.get(column).text()), rows.stream().map(row -> row.get(column)));
        return cells.flatMap(text -> Stream.of(text.split(" ", -1)))
                .mapToDouble(head::width)
                .max()
                .orElse(0);
    }

    private boolean isWords(int column) {
        return headings.get(column).holds() == Holds.WORDS;
    }

    /** What its widest cell takes; of words not more than half of a usual table. */
    private double ownWidth(int column) {
        double cells = rows.stream()
                .mapToDouble(row -> cell.width(row.get(column)))
                .max()
                .orElse(0);
        double widest = Math.max(head.width(headings.get(column).text()), cells);
        return isWords(column)
                ? Math.min(widest, Math.min(WIDEST_WORDS, MOST_WORDS * mostLines) * cell.sizePt())
                : widest;
    }
}
