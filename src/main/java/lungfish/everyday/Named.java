package lungfish.everyday;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lungfish.room.OutletId;
import lungfish.room.Room;
import lungfish.room.Seat;

/** The outlets in place that a keeper means by one word: an outlet's own id, or that of its tank, shelf or rack. */
public final class Named {
    /** Means all outlets that run only sometimes: a hatchery that is off today. */
    public static final String SOMETIMES = "sometimes";

    private Named() {}

    /**
     * The outlets meant.
     *
     * @return empty where no part of the room in place is called so, or none of its outlets is
     */
    public static Optional<Set<OutletId>> outlets(Room room, String word) {
        Set<OutletId> meant =
                those(room, seat -> word.equals(SOMETIMES) ? seat.outlet().isSometimes() : isCalled(seat, word));
        return meant.isEmpty() ? Optional.empty() : Optional.of(meant);
    }

    private static Set<OutletId> those(Room room, Predicate<Seat> wanted) {
        return room.seats().stream()
                .filter(seat -> !seat.planned())
                .filter(wanted)
                .map(seat -> seat.outlet().id())
                .collect(Collectors.toSet());
    }

    private static boolean isCalled(Seat seat, String word) {
        boolean onShelf = seat.rack().shelves().stream()
                .filter(shelf -> shelf.id().text().equals(word))
                .anyMatch(shelf -> shelf.tanks().contains(seat.tank()));
        return onShelf
                || seat.outlet().id().text().equals(word)
                || seat.tank().id().text().equals(word)
                || seat.rack().id().text().equals(word);
    }
}
