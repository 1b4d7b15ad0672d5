package lungfish.desktop;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import lungfish.choice.BenchRow;
import lungfish.choice.BlowerBench;
import lungfish.drawing.BenchColumns;
import lungfish.drawing.BenchLine;
import lungfish.drawing.BenchRowPicture;
import lungfish.drawing.Look;
import lungfish.report.BenchFigure;
import lungfish.report.BenchWords;
import org.jspecify.annotations.Nullable;

/** The blowers of a bench, the best first: a click takes one or marks it for comparing. */
final class BenchList extends JList<BenchRow> {
    /** So many can be read side by side. */
    static final int MOST_MARKED = 3;

    private static final List<List<String>> HEADS = BenchFigure.LISTED.stream()
            .map(figure -> List.of(figure.head(), figure.underHead()))
            .toList();
    private static final List<String> TITLES =
            BenchFigure.LISTED.stream().map(BenchFigure::title).toList();

    private final transient View view;
    private final transient IntSupplier widthPx;
    private final transient Consumer<BenchRow> take;
    private final transient Runnable marking;
    private final DefaultListModel<BenchRow> rows = new DefaultListModel<>();
    private final Set<String> marked = new LinkedHashSet<>();
    private final transient Map<String, BenchLine> lines = new HashMap<>();
    private transient Optional<Told> told = Optional.empty();
    private transient @Nullable BlowerBench bench;

    /** All that the rows show: they are made anew only when some of it changes. */
    private record Told(BlowerBench bench, List<BenchRow> rows, Set<String> taken, Look look, int widthPx) {}

    private transient BenchColumns columns = BenchColumns.NONE;

    /**
     * An empty list.
     *
     * @param isCurrent whether what is shown is of the room as it is now
     * @param take hears which one is taken
     * @param marking hears that other ones are marked
     */
    BenchList(View view, IntSupplier widthPx, BooleanSupplier isCurrent, Consumer<BenchRow> take, Runnable marking) {
        this.view = view;
        this.widthPx = widthPx;
        this.take = take;
        this.marking = marking;
        setModel(rows);
        setName("candidates");
        getAccessibleContext().setAccessibleName("Blowers, the best first");
        getAccessibleContext().setAccessibleDescription("Enter takes one, Space marks it for comparing");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new BenchCell(view, this, isCurrent));
        Keys.bind(this, "ENTER", () -> selected().ifPresent(take));
        Keys.bind(this, "SPACE", () -> selected().ifPresent(this::mark));
        Pointing pointing = new Pointing();
        addMouseListener(pointing);
        addMouseMotionListener(pointing);
    }

    /**
     * Shows these rows of a bench; whichever was chosen stays so.
     *
     * @param taken the classes on which the plan runs
     */
    void show(BlowerBench that, List<BenchRow> those, Set<String> taken) {
        Told now = new Told(that, those, taken, view.look(), widthPx.getAsInt());
        if (!told.equals(Optional.of(now))) {
            told = Optional.of(now);
            fill(now);
        }
    }

    private void fill(Told now) {
        String chosen = selected().map(BenchRow::id).orElse("");
        bench = now.bench();
        marked.removeIf(id -> now.bench().row(id).isEmpty());
        lines.clear();
        BenchWords words = new BenchWords(now.bench(), view.quantities());
        now.rows()
                .forEach(row -> lines.put(
                        row.id(), line(row, words.reason(row), now.taken().contains(row.id()))));
        columns = BenchColumns.of(
                HEADS,
                List.copyOf(lines.values()),
                BenchRowPicture.figuresPx(view.look(), widthPx.getAsInt()),
                view.look());
        rows.clear();
        rows.addAll(now.rows());
        for (int i = 0; i < now.rows().size(); i++) {
            if (now.rows().get(i).id().equals(chosen)) {
                setSelectedIndex(i);
            }
        }
    }

    Optional<BenchRow> selected() {
        return Optional.ofNullable(getSelectedValue());
    }

    /** Those to be compared, in the order in which they were marked. */
    List<BenchRow> marked() {
        List<BenchRow> those = new ArrayList<>();
        if (bench != null) {
            BlowerBench known = bench;
            marked.forEach(id -> known.row(id).ifPresent(those::add));
        }
        return those;
    }

    /** Marks it, or no longer; the one marked first gives way to a fourth. */
    void mark(BenchRow row) {
        if (!marked.remove(row.id())) {
            marked.add(row.id());
        }
        if (marked.size() > MOST_MARKED) {
            marked.remove(marked.iterator().next());
        }
        repaint();
        marking.run();
    }

    BenchColumns columns() {
        return columns;
    }

    Optional<BlowerBench> bench() {
        return Optional.ofNullable(bench);
    }

    BenchRowPicture picture() {
        return new BenchRowPicture(view.look(), widthPx.getAsInt(), columns);
    }

    /** What is shown of a row that is in the list. */
    BenchLine line(BenchRow row) {
        return Objects.requireNonNull(lines.get(row.id())).marked(marked.contains(row.id()));
    }

    private BenchLine line(BenchRow row, String reason, boolean isTaken) {
        return new BenchLine(
                row.candidate(),
                row.candidate().kind().name() + (row.isOwn() ? " · from your data sheet" : ""),
                BenchFigure.LISTED.stream()
                        .map(figure -> figure.show(row, view.quantities()))
                        .toList(),
                TITLES,
                reason,
                isTaken,
                false);
    }

    /** The row under a point. */
    private Optional<Integer> rowAt(Point point) {
        int at = locationToIndex(point);
        return at >= 0 && getCellBounds(at, at).contains(point) ? Optional.of(at) : Optional.empty();
    }

    /** What of a row is under a point. */
    private BenchRowPicture.Hit hit(int row, Point point) {
        Rectangle cell = getCellBounds(row, row);
        return picture().at(point.x - cell.x, point.y - cell.y, line(rows.get(row)));
    }

    private final class Pointing extends MouseAdapter {
        @Override
        public void mouseClicked(MouseEvent event) {
            rowAt(event.getPoint()).ifPresent(row -> {
                BenchRowPicture.Hit hit = hit(row, event.getPoint());
                if (hit == BenchRowPicture.Hit.MARK) {
                    mark(rows.get(row));
                } else if (hit == BenchRowPicture.Hit.TAKE || event.getClickCount() == 2) {
                    take.accept(rows.get(row));
                }
            });
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            boolean isLive = rowAt(event.getPoint())
                    .filter(row -> hit(row, event.getPoint()) != BenchRowPicture.Hit.ROW)
                    .isPresent();
            setCursor(Cursor.getPredefinedCursor(isLive ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        }
    }
}
