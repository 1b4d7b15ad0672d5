package lungfish.growth;

import lungfish.headroom.Fits;
import lungfish.room.Point;
import lungfish.room.RunId;

/**
 * A place on the pipe and how many more outlets fit there.
 *
 * @param alongM from the beginning of the run
 * @param at where that is in the room
 * @param isTap whether something hangs there already
 */
public record Place(RunId run, double alongM, Point at, boolean isTap, Fits fits) {
    public int outlets() {
        return fits.outlets();
    }
}
