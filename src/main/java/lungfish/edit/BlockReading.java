package lungfish.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Seat;

/** Reads lines of cells into outlets, and remembers every bad one. */
final class BlockReading {
    private final Map<OutletId, Seat> seats;
    private final List<Column> columns;
    private final Reader reader;
    private final Map<OutletId, Outlet> after = new LinkedHashMap<>();
    private final List<BadCell> bad = new ArrayList<>();

    BlockReading(Map<OutletId, Seat> seats, List<Column> columns, Reader reader) {
        this.seats = seats;
        this.columns = columns;
        this.reader = reader;
    }

    /** One line for one outlet; empty: the block is longer than the table. */
    void line(int row, List<String> cells, Optional<OutletId> id) {
        Seat seat = id.map(seats::get).orElse(null);
        if (seat == null) {
            bad.add(new BadCell(row, heading(0), "a row below the last outlet", "no more rows than the table has"));
            return;
        }
        int told = bad.size();
        Outlet outlet = read(row, cells, seat, false);
        if (OutletSound.trouble(seat.tank(), outlet).isPresent()) {
            bad.subList(told, bad.size()).clear();
            outlet = read(row, cells, seat, true);
        }
        if (!outlet.equals(seat.outlet())) {
            after.put(outlet.id(), outlet);
        }
    }

    /** Cells from left to right; those that make no sense together are found out one by one. */
    private Outlet read(int row, List<String> cells, Seat seat, boolean oneByOne) {
        Outlet outlet = seat.outlet();
        for (int i = 0; i < cells.size(); i++) {
            if (i >= columns.size()) {
                tooWide(row, i, cells.get(i));
                continue;
            }
            Outlet next = cell(row, columns.get(i), cells.get(i), outlet, seat);
            outlet = oneByOne ? sound(row, columns.get(i), cells.get(i), outlet, next, seat) : next;
        }
        return outlet;
    }

    private String heading(int column) {
        return column < columns.size() ? columns.get(column).heading() : "column " + (column + 1);
    }

    private void tooWide(int row, int column, String text) {
        if (!text.isEmpty()) {
            bad.add(new BadCell(row, heading(column), "'" + text + "'", "no more columns than the table has"));
        }
    }

    private Outlet cell(int row, Column column, String text, Outlet outlet, Seat seat) {
        Cell.Typed typed = column.cell().read(text, outlet, seat, reader);
        if (typed.outlet().isEmpty()) {
            bad.add(new BadCell(row, column.heading(), typed.found(), typed.expected()));
        }
        return typed.outlet().orElse(outlet);
    }

    private Outlet sound(int row, Column column, String text, Outlet outlet, Outlet next, Seat seat) {
        Optional<Refused> trouble = OutletSound.trouble(seat.tank(), next);
        if (trouble.isEmpty() || next.equals(outlet)) {
            return next;
        }
        bad.add(new BadCell(
                row, column.heading(), "'" + text + "'", trouble.get().sentence(reader.quantities())));
        return outlet;
    }

    Map<OutletId, Outlet> after() {
        return after;
    }

    List<BadCell> bad() {
        return bad;
    }
}
