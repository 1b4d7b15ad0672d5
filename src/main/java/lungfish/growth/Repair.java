package lungfish.growth;

import java.util.Optional;
import lungfish.sizing.Limit;

/**
 * The cheapest step that mends a stage.
 *
 * @param mend absent where none of those tried gives the room its air
 * @param still the wish that it leaves unmet, where none of those tried meets them all; absent: it mends everything
 * @param tried how many steps were tried, from the cheapest up
 */
public record Repair(Optional<Mend> mend, Optional<Limit.Broken> still, int tried) {}
