package lungfish.headroom;

import java.util.Optional;
import lungfish.sizing.Limit;

/**
 * How many more outlets fit at one place.
 *
 * @param outlets that still fit
 * @param pressurePa that the room needs with all of them, gauge, at the blowers' outlets; not a number where no air comes to
 *     the place
 * @param limit the first to break with one more; absent when none does within {@link Search#MOST}
 */
public record Fits(int outlets, double pressurePa, Optional<Limit.Broken> limit) {}
