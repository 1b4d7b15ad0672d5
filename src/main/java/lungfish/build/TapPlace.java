package lungfish.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lungfish.room.GangId;
import lungfish.room.OutletId;
import lungfish.room.RunId;

/**
 * Where airlines leave the pipe.
 *
 * @param alongM along the run; of several holes, the middle of them
 * @param outlets that are fed here, in the order drawn
 * @param gang that hangs here, and shares one hole
 * @param boreM widest tubing that is led from here
 * @param typed whether the keeper said the place, so that it is not moved
 */
record TapPlace(RunId run, double alongM, List<OutletId> outlets, Optional<GangId> gang, double boreM, boolean typed) {
    /** From hole to hole, so that a saddle fits and a valve can be turned: common practice, no source. */
    static final double APART_M = 0.05;

    /** From a hole to the nearest socket: room for a saddle or a thread's boss. Common practice, no source. */
    private static final double BESIDE_M = 0.02;

    TapPlace {
        outlets = List.copyOf(outlets);
    }

    /** How many holes are drilled here. */
    int holes() {
        return gang.isPresent() ? 1 : outlets.size();
    }

    /** From the middle to where another fitting may begin. */
    double halfWidthM() {
        return (holes() - 1) * APART_M / 2 + BESIDE_M;
    }

    /** Whether the holes of the next place along the run would come closer than they should. */
    boolean touches(TapPlace next) {
        double apartM = APART_M * (holes() + next.holes()) / 2.0;
        return run.equals(next.run) && next.alongM - alongM < apartM - 1e-9;
    }

    /** Both places as one, in the middle of all their holes. */
    TapPlace with(TapPlace next) {
        List<OutletId> all = new ArrayList<>(outlets);
        all.addAll(next.outlets);
        double middleM = (alongM * holes() + next.alongM * next.holes()) / (holes() + next.holes());
        return new TapPlace(run, middleM, all, gang, Math.max(boreM, next.boreM), typed || next.typed);
    }

    TapPlace at(double alongNowM) {
        return new TapPlace(run, alongNowM, outlets, gang, boreM, typed);
    }
}
