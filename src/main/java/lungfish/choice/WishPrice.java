package lungfish.choice;

import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.sizing.Limit;

/**
 * What one wish, or one limit, costs.
 *
 * @param limit that is left out while all others are kept
 * @param build the cheapest then; absent where there is none even so
 * @param costs how much dearer the cheapest build is with it; absent where none meets everything
 */
public record WishPrice(Limit limit, Optional<Build> build, OptionalDouble costs) {}
