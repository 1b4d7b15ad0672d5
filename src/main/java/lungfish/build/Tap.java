package lungfish.build;

import java.util.List;
import java.util.Optional;
import lungfish.catalogue.ThreadClass;
import lungfish.room.GangId;
import lungfish.room.OutletId;
import lungfish.room.RunId;

/**
 * A place to tap, as it is measured.
 *
 * @param alongM along the run from its first point; of several holes, the middle of them
 * @param corner number of the corner before it, from 1 as drawn
 * @param fromCornerM from that corner, along the middle line of the pipe
 * @param piece number of the piece of pipe that it is in
 * @param fromPieceM from the end of that piece that lies towards the corner
 * @param holes how many, side by side {@link TapPlace#APART_M} apart
 * @param outlets fed from here
 * @param gang that hangs here
 * @param hold what holds the thread
 * @param movedM how far it is from where the drawing has it, to keep clear of fittings
 */
public record Tap(
        RunId run,
        double alongM,
        int corner,
        double fromCornerM,
        int piece,
        double fromPieceM,
        int holes,
        List<OutletId> outlets,
        Optional<GangId> gang,
        ThreadClass thread,
        Hold hold,
        double movedM) {
    /** From hole to hole, m. */
    public static final double APART_M = TapPlace.APART_M;

    /** What holds the thread. */
    public enum Hold {
        /** The wall of the pipe: drill and tap it. */
        WALL,
        /** A saddle round the pipe: the wall is only drilled through. */
        SADDLE
    }

    public Tap {
        outlets = List.copyOf(outlets);
    }
}
