package lungfish.edit;

import java.util.List;
import lungfish.room.Point;
import lungfish.room.Rack;
import lungfish.room.Shell;

/** Whether what stands in the room stands in it. A rack may stick out, as it does while it is being dragged, but not stand wholly outside. */
record PlaceSound(Shell shell, List<Refused> troubles) {
    static PlaceSound of(Shell shell, List<Refused> troubles) {
        return new PlaceSound(shell, troubles);
    }

    void rack(Rack rack) {
        boolean in = rack.xM() < shell.lengthM()
                && rack.xM() + rack.spanXM() > 0
                && rack.yM() < shell.widthM()
                && rack.yM() + rack.spanYM() > 0;
        if (!in) {
            troubles.add(Refused.because(
                    Words.opening(Words.rack(rack)) + " would stand outside the room.",
                    "Keep a part of it within the walls."));
        }
        Sizes.place(rack.xM(), troubles);
        Sizes.place(rack.yM(), troubles);
    }

    /** A point that may stick out by so much. */
    void point(Point at, double slackM) {
        boolean in = isIn(at.xM(), shell.lengthM(), slackM)
                && isIn(at.yM(), shell.widthM(), slackM)
                && isIn(at.zM(), shell.heightM(), slackM);
        if (!in) {
            troubles.add(Refused.because(
                    "That would lie outside the room.",
                    "Keep it within the walls, the floor and the ceiling ({most}); pipe may leave the room only to a "
                            + "blower that stands outside.",
                    Refused.length("most", shell.heightM())));
        }
    }

    private static boolean isIn(double at, double mostM, double slackM) {
        return at >= -slackM && at <= mostM + slackM;
    }
}
