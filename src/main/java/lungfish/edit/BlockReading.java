package lungfish.edit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Seat;
import lungfish.room.Tank;
import lungfish.room.TankId;

/** Reads lines of cells into outlets and the names of their tanks, and remembers every bad one. */
final class BlockReading {
    private final Map<OutletId, Seat> seats;
    private final List<Column> columns;
    private final Reader reader;
    private final Map<OutletId, Outlet> after = new LinkedHashMap<>();
    private final Map<TankId, String> names = new LinkedHashMap<>();
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
            bad.add(
                    id.isPresent()
                            ? new BadCell(row, heading(0), "no outlet is called '" + id.get() + "'", "one of the room")
                            : new BadCell(
                                    row, heading(0), "a row below the last outlet", "no more rows than the table has"));
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
        if (column == Column.TANK) {
            name(row, text, seat.tank());
            return outlet;
        }
        Cell.Typed typed = column.cell().read(text, outlet, seat, reader);
        if (typed.outlet().isEmpty()) {
            bad.add(new BadCell(row, column.heading(), typed.found(), typed.expected()));
        }
        return typed.outlet().orElse(outlet);
    }

    /** A tank of several outlets stands in several rows, and has one name. */
    private void name(int row, String text, Tank tank) {
        boolean isNew = !text.equals(names.getOrDefault(tank.id(), tank.name()));
        if (isNew && Names.trouble(text).isPresent()) {
            String found = text.isEmpty() ? "nothing" : "'" + text + "'";
            bad.add(new BadCell(row, Column.TANK.heading(), found, "a name, as one line of text"));
        } else if (isNew && names.containsKey(tank.id())) {
            String first = "'" + names.get(tank.id()) + "', as in a row above: it is the same tank";
            bad.add(new BadCell(row, Column.TANK.heading(), "'" + text + "'", first));
        } else if (isNew) {
            names.put(tank.id(), text);
        }
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

    /** Gives tanks that would all be called the same names in a row. */
    void nameInARow(Room room) {
        if (names.size() > 1) {
            Set<String> taken = new HashSet<>(Taken.tankNames(room));
            Find.tanks(room, names.keySet()).forEach(tank -> taken.remove(tank.name()));
            names.replaceAll((tank, wanted) -> {
                String name = Names.unique(wanted, taken);
                taken.add(name);
                return name;
            });
        }
    }

    /** What would change: "outlet A-1-1-a", "tank Fry 1", "3 outlets". */
    String words(Room room) {
        return after.isEmpty() && !names.isEmpty()
                ? PartWords.tanks(Find.tanks(room, names.keySet()))
                : PartWords.outlets(Find.outlets(room, after.keySet()));
    }

    /** What came of it. Where the good cells together would make no sound room, that is told at the first of them. */
    Pasted pasted(Room room, String done, Reader reader) {
        if (after.isEmpty() && names.isEmpty()) {
            return new Pasted(bad, Optional.empty());
        }
        Attempt attempt = Edit.tried(room, done, this::put);
        attempt.refused()
                .map(refused -> new BadCell(1, heading(0), "this", refused.sentence(reader.quantities())))
                .ifPresent(bad::add);
        return new Pasted(bad, attempt.edit());
    }

    private Room put(Room before) {
        Room named = names.isEmpty()
                ? before
                : Each.tank(before, tank -> names.containsKey(tank.id()) ? tank.named(names.get(tank.id())) : tank);
        return Each.outlet(named, outlet -> after.getOrDefault(outlet.id(), outlet));
    }
}
