package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds places for labels: what is taken already costs, and the candidate that covers least is chosen. */
final class LabelSpots {
    /** What a label may cover and what it must not, by weight. */
    private record Taken(Rectangle2D box, double weight) {}

    /** A label that leaves the picture is worth any other place. */
    private static final double OUTSIDE = 1e6;

    private final List<Taken> taken = new ArrayList<>();
    private final Rectangle2D frame;

    LabelSpots(Rectangle2D frame) {
        this.frame = frame;
    }

    void take(Rectangle2D box, double weight) {
        taken.add(new Taken(box, weight));
    }

    /** The candidate that covers least, and of equals the first; it counts as taken from now on. */
    Rectangle2D place(List<Rectangle2D> candidates) {
        Rectangle2D best = candidates.get(0);
        double least = cost(best);
        for (Rectangle2D candidate : candidates) {
            double cost = cost(candidate);
            if (cost < least - 1e-9) {
                best = candidate;
                least = cost;
            }
        }
        take(best, 6);
        return best;
    }

    /** Weighted area that a box would cover. */
    double cost(Rectangle2D box) {
        double sum = frame.contains(box) ? 0 : OUTSIDE;
        for (Taken each : taken) {
            Rectangle2D common = box.createIntersection(each.box());
            if (common.getWidth() > 0 && common.getHeight() > 0) {
                sum += each.weight() * common.getWidth() * common.getHeight();
            }
        }
        return sum;
    }
}
