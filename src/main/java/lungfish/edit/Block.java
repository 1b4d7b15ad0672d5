package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import lungfish.room.Outlet;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Seat;

/** The table of outlets as a block of cells: out to a spreadsheet, in from one, filled down, and many rows at once. */
public final class Block {
    private Block() {}

    /** The cells of these outlets, as tab-separated text: one line each, in this order. */
    public static String out(Room room, List<OutletId> rows, List<Column> columns, Reader reader) {
        Map<OutletId, Seat> seats = seats(room);
        return new Sheet(rows.stream()
                        .filter(seats::containsKey)
                        .map(id -> columns.stream()
                                .map(column -> column.show(seat(seats, id), reader))
                                .toList())
                        .toList())
                .tabbed();
    }

    /** The same of a tab-separated text. */
    public static Pasted in(Room room, String text, List<OutletId> rows, List<Column> columns, Reader reader) {
        return in(room, Sheet.ofTabs(text), rows, columns, reader);
    }

    /**
     * Reads a block of cells into the outlets of the table.
     *
     * @param rows the outlets from the row on where the block is put, in the order of the table
     * @param columns those from the column on where the block is put
     */
    public static Pasted in(Room room, Sheet block, List<OutletId> rows, List<Column> columns, Reader reader) {
        BlockReading reading = new BlockReading(seats(room), columns, reader);
        List<List<String>> lines = block.rows();
        for (int i = 0; i < lines.size(); i++) {
            reading.line(i + 1, lines.get(i), i < rows.size() ? Optional.of(rows.get(i)) : Optional.empty());
        }
        return reading.pasted(room, "Paste into " + reading.words(room), reader);
    }

    /** Types the same into one column of many outlets. Several tanks get names in a row: "Fry 1", "Fry 2". */
    public static Pasted set(Room room, List<OutletId> rows, Column column, String text, Reader reader) {
        BlockReading reading = new BlockReading(seats(room), List.of(column), reader);
        for (int i = 0; i < rows.size(); i++) {
            reading.line(i + 1, List.of(text.strip()), Optional.of(rows.get(i)));
        }
        reading.nameInARow(room);
        String verb = column == Column.TANK ? "Rename " : "Set " + Words.midSentence(column.heading()) + " of ";
        return reading.pasted(room, verb + reading.words(room), reader);
    }

    /** Gives the other rows what the first has in these columns. */
    public static Attempt fillDown(Room room, List<OutletId> rows, Collection<Column> columns) {
        Optional<Outlet> first = rows.isEmpty()
                ? Optional.empty()
                : Find.outlet(room, rows.get(0).text());
        if (first.isEmpty() || rows.size() < 2) {
            return Refused.because("There is nothing below to fill.", "Choose the row to copy and those below it.");
        }
        Function<Outlet, Outlet> filled = outlet -> {
            Outlet after = outlet;
            for (Column column : columns) {
                after = column.cell().copied(first.get(), after);
            }
            return after;
        };
        String what = columns.size() == 1
                ? Words.midSentence(columns.iterator().next().heading()) + " over "
                : "";
        return OutletEdits.change(room, rows, "Fill down " + what, outlet -> filled.apply(outlet));
    }

    private static Map<OutletId, Seat> seats(Room room) {
        Map<OutletId, Seat> seats = new HashMap<>();
        room.seats().forEach(seat -> seats.putIfAbsent(seat.outlet().id(), seat));
        return seats;
    }

    private static Seat seat(Map<OutletId, Seat> seats, OutletId id) {
        return Objects.requireNonNull(seats.get(id));
    }

    /** The headings, as a line to go above the block. */
    public static String headings(List<Column> columns) {
        List<String> words = new ArrayList<>();
        columns.forEach(column -> words.add(column.heading()));
        return String.join("\t", words) + "\n";
    }
}
