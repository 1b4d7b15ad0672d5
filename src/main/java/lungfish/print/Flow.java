package lungfish.print;

import java.util.ArrayList;
import java.util.List;

/** Lays units below each other, page after page. */
final class Flow {
    /** Rows of a table that stay together: below a heading, and above totals. */
    private static final int TOGETHER = 2;

    private final double x;
    private final double top;
    private final double widthPt;
    private final double heightPt;
    private final List<List<Mark>> pages = new ArrayList<>();
    private double usedPt;

    private Flow(double x, double top, double widthPt, double heightPt) {
        this.x = x;
        this.top = top;
        this.widthPt = widthPt;
        this.heightPt = heightPt;
        turn();
    }

    /** The marks of each page, inside an area that is the same on all. */
    static List<List<Mark>> pages(List<Unit> units, double x, double top, double widthPt, double heightPt) {
        Flow flow = new Flow(x, top, widthPt, heightPt);
        for (int i = 0; i < units.size(); i++) {
            flow.lay(units, i);
        }
        return flow.pages;
    }

    private void turn() {
        pages.add(new ArrayList<>());
        usedPt = 0;
    }

    private void lay(List<Unit> units, int i) {
        Unit unit = units.get(i);
        if (unit instanceof Unit.PageEnd) {
            if (usedPt > 0) {
                turn();
            }
        } else if (unit instanceof Unit.Rows rows) {
            rows(rows);
        } else {
            Unit.Whole whole = (Unit.Whole) unit;
            if (usedPt > 0 && gap(whole) + needed(units, i) > heightPt - usedPt) {
                turn();
            }
            place(whole.block(), gap(whole));
        }
    }

    /** Of a unit with all that must begin on the same page. */
    private double needed(List<Unit> units, int i) {
        Unit unit = units.get(i);
        if (unit instanceof Unit.Rows rows) {
            return height(
                    rows.grid().part(0, Math.min(TOGETHER, rows.grid().rows().size())));
        }
        if (unit instanceof Unit.Whole whole) {
            boolean isHeading = whole.staysWithNext() && i + 1 < units.size();
            double after = isHeading ? units.get(i + 1).gapPt() + needed(units, i + 1) : 0;
            return height(whole.block()) + after;
        }
        return 0;
    }

    private void rows(Unit.Rows unit) {
        Grid grid = unit.grid();
        int from = 0;
        do {
            int to = fitting(grid, from, gap(unit));
            if (to <= from && usedPt > 0) {
                turn();
                to = fitting(grid, from, 0);
            }
            to = Math.max(to, Math.min(from + 1, grid.rows().size())); // a row as high as a page is laid all the same
            place(grid.part(from, to), gap(unit));
            from = to;
            if (from < grid.rows().size()) {
                turn();
            }
        } while (from < grid.rows().size());
    }

    /** Up to which row a table finds room; totals are never alone on a page. */
    private int fitting(Grid grid, int from, double gapPt) {
        int last = grid.rows().size();
        int to = last;
        while (to > from && gapPt + height(grid.part(from, to)) > heightPt - usedPt) {
            to--;
        }
        boolean leavesTotalsAlone = grid.endsInTotals() && to == last - 1;
        int kept = leavesTotalsAlone ? to - 1 : to;
        return to < last && kept - from < TOGETHER ? from : kept;
    }

    private double gap(Unit unit) {
        return usedPt > 0 ? unit.gapPt() : 0;
    }

    private double height(Block block) {
        return block.at(x, top, widthPt).heightPt();
    }

    private void place(Block block, double gapPt) {
        Block.Laid laid = block.at(x, top + usedPt + gapPt, widthPt);
        pages.get(pages.size() - 1).addAll(laid.marks());
        usedPt += gapPt + laid.heightPt();
    }
}
