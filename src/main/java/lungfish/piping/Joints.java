package lungfish.piping;

import java.util.ArrayList;
import java.util.List;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Run;

/**
 * Where runs are joined: an end of one that touches another, at its end or along its way. Two runs that cross in mid-run
 * pass each other and are not joined.
 */
final class Joints {
    /** A run's end, and the place on another run that it touches. */
    record Joint(Stop end, Stop onto) {}

    /** An end this close but not touching is likely meant to be joined. */
    private static final double NEARLY_M = 0.25;

    private final List<Joint> joints = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    Joints(Layout layout) {
        for (RunLine line : layout.lines()) {
            for (Stop end : line.ends()) {
                layout.nearestBut(line.run().id(), layout.at(end)).ifPresent(hit -> look(end, hit));
            }
        }
    }

    private void look(Stop end, Layout.Hit hit) {
        if (hit.distanceM() <= Run.TOUCH_M && isSeenFromThere(end, hit.stop())) {
            return;
        }
        if (hit.distanceM() <= Run.TOUCH_M) {
            joints.add(new Joint(end, hit.stop()));
        } else if (hit.distanceM() <= NEARLY_M) {
            findings.add(Finding.of(
                    Code.LOOSE_END, end.run().part(), new Amount("found", hit.distanceM(), Dimension.LENGTH)));
        }
    }

    /** Two ends that touch are one joint, though each finds the other. */
    private boolean isSeenFromThere(Stop end, Stop onto) {
        return joints.stream().anyMatch(joint -> near(joint.end(), onto) && near(joint.onto(), end));
    }

    private static boolean near(Stop one, Stop other) {
        return one.run().equals(other.run()) && Math.abs(one.alongM() - other.alongM()) <= Run.TOUCH_M;
    }

    List<Joint> joints() {
        return joints;
    }

    List<Finding> findings() {
        return findings;
    }
}
