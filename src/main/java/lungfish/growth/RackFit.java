package lungfish.growth;

import java.util.Optional;
import lungfish.headroom.Fits;
import lungfish.room.Point;
import lungfish.room.RackId;
import lungfish.room.RunId;
import lungfish.sizing.Limit;

/**
 * Whether a planned rack fits on its own, and where on the pipe it is best hung.
 *
 * @param outlets of the rack
 * @param breaks what breaks with its outlets at their own taps; absent: it fits
 * @param own how many more fit after it, its outlets at their own taps
 * @param best the same with all its outlets hung at the best place; absent where no place is better than another
 */
public record RackFit(RackId rack, int outlets, Optional<Limit.Broken> breaks, Fits own, Optional<Best> best) {
    /** The place where the room needs least pressure with the rack on. */
    public record Best(RunId run, double alongM, Point at, Fits fits) {}

    public boolean fits() {
        return breaks.isEmpty();
    }
}
