package lungfish.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
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
        return rows.stream()
                .filter(seats::containsKey)
                .map(id -> columns.stream()
                        .map(column -> quoted(column.show(seat(seats, id), reader)))
                        .collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** Tabs, line ends and quotes within a cell would part it. */
    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(c -> c == '\t' || c == '\n' || c == '\r') && !cell.startsWith("\"");
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /**
     * Reads a block of cells into the outlets of the table.
     *
     * @param text tab-separated
     * @param rows the outlets from the row on where the block is put, in the order of the table
     * @param columns those from the column on where the block is put
     */
    public static Pasted in(Room room, String text, List<OutletId> rows, List<Column> columns, Reader reader) {
        BlockReading reading = new BlockReading(seats(room), columns, reader);
        List<List<String>> lines = Sheet.ofTabs(text).rows();
        for (int i = 0; i < lines.size(); i++) {
            reading.line(i + 1, lines.get(i), i < rows.size() ? Optional.of(rows.get(i)) : Optional.empty());
        }
        return pasted(room, reading, "Paste into ");
    }

    /** Types the same into one column of many outlets. */
    public static Pasted set(Room room, List<OutletId> rows, Column column, String text, Reader reader) {
        BlockReading reading = new BlockReading(seats(room), List.of(column), reader);
        for (int i = 0; i < rows.size(); i++) {
            reading.line(i + 1, List.of(text.strip()), Optional.of(rows.get(i)));
        }
        return pasted(room, reading, "Set " + Words.midSentence(column.heading()) + " of ");
    }

    private static Pasted pasted(Room room, BlockReading reading, String verb) {
        Map<OutletId, Outlet> after = reading.after();
        String done = verb + PartWords.outlets(Find.outlets(room, after.keySet()));
        Optional<Edit> good = after.isEmpty()
                ? Optional.empty()
                : Edit.tried(room, done, put(after)).edit();
        return new Pasted(reading.bad(), good);
    }

    private static UnaryOperator<Room> put(Map<OutletId, Outlet> after) {
        return before -> Each.outlet(before, outlet -> after.getOrDefault(outlet.id(), outlet));
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
        return OutletEdits.change(room, rows, "Fill down ", outlet -> filled.apply(outlet));
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
