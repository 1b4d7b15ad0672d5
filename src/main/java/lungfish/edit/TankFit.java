package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.room.Room;

/**
 * Which tanks of a list find a place in a room.
 *
 * @param edit brings those in; empty where there are none
 * @param tanks how many these are
 * @param left those that find none, each with the reason
 */
public record TankFit(Optional<Edit> edit, int tanks, List<BadCell> left) {
    private static final String WHERE = "Place";

    public TankFit {
        left = List.copyOf(left);
    }

    /** All of them where all fit; else one after the other, in the order of the list. */
    static TankFit of(Room room, List<TankList.Item> items, Reader reader) {
        Attempt all = TankImport.of(room, items);
        return all.edit().isPresent() || items.isEmpty()
                ? new TankFit(all.edit(), items.size(), List.of())
                : oneByOne(room, items, reader);
    }

    private static TankFit oneByOne(Room room, List<TankList.Item> items, Reader reader) {
        List<TankList.Item> kept = new ArrayList<>();
        List<BadCell> left = new ArrayList<>();
        Optional<Edit> edit = Optional.empty();
        for (TankList.Item item : items) {
            kept.add(item);
            Attempt attempt = TankImport.of(room, kept);
            edit = attempt.edit().isPresent() ? attempt.edit() : edit;
            attempt.refused().ifPresent(refused -> {
                kept.remove(item);
                left.add(new BadCell(item.row(), WHERE, "no place for " + item.name(), sentence(refused, reader)));
            });
        }
        return new TankFit(edit, kept.size(), left);
    }

    /** Its row is told already. */
    private static String sentence(Refused refused, Reader reader) {
        return refused.sentence(reader.quantities()).replaceFirst("^Row \\d+: ", "");
    }
}
