package lungfish.sizing;

import java.util.List;
import java.util.OptionalDouble;
import lungfish.room.Wishes.Wish;

/**
 * What is asked of a blower beyond the targets.
 *
 * @param reserveShare room to grow, as a share of the targets
 * @param sparePa at the index outlet
 * @param loudestDba at the listener; absent: no wish
 * @param warmestPipeK the temperature limit of the pipe
 * @param mainsV of the room; absent: unknown
 * @param order what matters first
 */
public record Asked(
        double reserveShare,
        double sparePa,
        OptionalDouble loudestDba,
        double warmestPipeK,
        OptionalDouble mainsV,
        List<Wish> order) {
    public Asked {
        order = List.copyOf(order);
    }
}
