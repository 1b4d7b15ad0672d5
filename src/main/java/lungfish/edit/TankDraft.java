package lungfish.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lungfish.room.Room;

/**
 * A list of tanks on its way into a room: how its text is read, what its columns mean, and what the keeper mended in it.
 *
 * @param text as it came
 * @param headed whether its first row is one of headings
 * @param meaning which column means what; columns that are not in it are left out
 */
public record TankDraft(
        String text,
        Sheet.Separator separator,
        DecimalMark decimals,
        boolean headed,
        TankList list,
        Map<Integer, TankProperty> meaning) {
    public TankDraft {
        meaning = Map.copyOf(meaning);
    }

    /** Reads a text as it most likely is meant; empty where it has no row of a tank. */
    public static Optional<TankDraft> of(String text) {
        Sheet.Separator separator = Sheet.Separator.of(text);
        return TankList.read(text, separator, true)
                .filter(list -> !list.guess().isEmpty())
                .or(() -> TankList.read(text, separator, false))
                .map(list -> new TankDraft(
                        text, separator, DecimalMark.of(list), !list.guess().isEmpty(), list, list.guess()));
    }

    /** Whether its headings tell so much of tanks that it can hardly be anything else. */
    public boolean speaksOfTanks() {
        return headed && meaning.size() > 1;
    }

    /** Read anew with another separator. What was mended is in the text no more: it came apart elsewhere. */
    public TankDraft parted(Sheet.Separator by) {
        return by == separator ? this : read(by, headed);
    }

    /** Read anew, with a first row of headings or of a tank. */
    public TankDraft headed(boolean that) {
        return that == headed ? this : read(separator, that);
    }

    private TankDraft read(Sheet.Separator by, boolean withHeadings) {
        return TankList.read(text, by, withHeadings)
                .map(other -> new TankDraft(text, by, DecimalMark.of(other), withHeadings, other, other.guess()))
                .orElse(this);
    }

    public TankDraft with(DecimalMark mark) {
        return new TankDraft(text, separator, mark, headed, list, meaning);
    }

    /** With another meaning of a column; empty: it is left out. No two columns mean the same: the other one is left out then. */
    public TankDraft meaning(int column, Optional<TankProperty> property) {
        Map<Integer, TankProperty> others = new LinkedHashMap<>(meaning);
        others.remove(column);
        property.ifPresent(that -> {
            others.values().remove(that);
            others.put(column, that);
        });
        return new TankDraft(text, separator, decimals, headed, list, others);
    }

    /** With another text in a cell. */
    public TankDraft mended(int rowNumber, int column, String cell) {
        return new TankDraft(text, separator, decimals, headed, list.with(rowNumber, column, cell), meaning);
    }

    /** What would come into this room, and all that is in the way. */
    public Look look(Room room, Reader reader) {
        TankList.Preview preview = list.preview(meaning, decimals, reader);
        return new Look(preview, TankFit.of(room, preview.items(), reader));
    }

    /**
     * What would come of it.
     *
     * @param fit how the tanks that could be read fit into the room
     */
    public record Look(TankList.Preview preview, TankFit fit) {
        /** Every bad cell, and every tank for which there is no place. */
        public List<BadCell> bad() {
            return Stream.concat(preview.bad().stream(), fit.left().stream()).toList();
        }
    }
}
