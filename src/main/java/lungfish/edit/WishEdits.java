package lungfish.edit;

import java.util.ArrayList;
import java.util.List;
import lungfish.room.Room;
import lungfish.room.Wishes.Wish;

/** Edits of what matters most among blowers. */
public final class WishEdits {
    private WishEdits() {}

    /** Every wish of a room, the one that matters most first, be it said or not. */
    public static List<Wish> order(Room room) {
        return Wish.whole(room.wishes().order());
    }

    /**
     * One wish to another place among all; with it the whole order is said.
     *
     * @param to its place afterwards, 0 the first; beyond the ends: at the end
     */
    public static Edit move(Room in, Wish wish, int to) {
        List<Wish> after = moved(order(in), wish, to);
        int at = after.indexOf(wish);
        String where = at == 0 ? "first" : "after " + after.get(at - 1).words();
        return new Edit("Wish for " + wish.words() + " " + where, room -> said(room, moved(order(room), wish, to)));
    }

    private static Room said(Room room, List<Wish> order) {
        boolean isAsBefore = order.equals(order(room));
        return isAsBefore ? room : room.withWishes(room.wishes().withOrder(order));
    }

    private static List<Wish> moved(List<Wish> order, Wish wish, int to) {
        List<Wish> moved = new ArrayList<>(order);
        moved.remove(wish);
        moved.add(Math.max(0, Math.min(to, moved.size())), wish);
        return moved;
    }
}
