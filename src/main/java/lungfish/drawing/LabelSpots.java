package lungfish.drawing;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds places for labels: what is taken already costs, and the candidate that covers least is chosen. */
final class LabelSpots {
    /** What a label may cover and what it must not, by weight. */
    private record Taken(double left, double top, double right, double bottom, double weight) {
        /** Area in common with a box, by weight; asked many thousand times for one drawing. */
        double covered(double fromX, double fromY, double toX, double toY) {
            double wide = Math.min(right, toX) - Math.max(left, fromX);
            double high = Math.min(bottom, toY) - Math.max(top, fromY);
            return wide > 0 && high > 0 ? weight * wide * high : 0;
        }

        boolean contains(double x, double y) {
            return x >= left && x < right && y >= top && y < bottom;
        }
    }

    /** A label that leaves the picture is worth any other place. */
    private static final double OUTSIDE = 1e6;

    /** Being a place further down the list counts as much as covering so much of weight 1. */
    private static final double LATER = 0.01;

    private final List<Taken> taken = new ArrayList<>();
    private final Rectangle2D frame;

    LabelSpots(Rectangle2D frame) {
        this.frame = frame;
    }

    void take(Rectangle2D box, double weight) {
        taken.add(new Taken(box.getX(), box.getY(), box.getMaxX(), box.getMaxY(), weight));
    }

    /** Takes a line, so wide to either side. */
    void takeAlong(Shape line, double by, double weight) {
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator each = line.getPathIterator(null, 0.5); !each.isDone(); each.next()) {
            boolean isLine = each.currentSegment(at) == PathIterator.SEG_LINETO;
            double length = isLine ? Math.hypot(at[0] - x, at[1] - y) : 0;
            int steps = (int) Math.ceil(length / (2 * by));
            for (int i = 1; i <= steps; i++) {
                double share = (double) i / steps;
                take(Boxes.around(x + share * (at[0] - x), y + share * (at[1] - y), by), weight);
            }
            x = at[0];
            y = at[1];
        }
    }

    /** The candidate that covers least, and of equals the first; it counts as taken from now on. */
    Rectangle2D place(List<Rectangle2D> candidates) {
        Rectangle2D best = best(candidates);
        take(best, 6);
        return best;
    }

    /** The candidate that covers least; a later one must be better by more than a little. */
    Rectangle2D best(List<Rectangle2D> candidates) {
        Rectangle2D best = candidates.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < candidates.size(); i++) {
            Rectangle2D candidate = candidates.get(i);
            double cost = cost(candidate) + LATER * i * candidate.getWidth() * candidate.getHeight();
            if (cost < least) {
                best = candidate;
                least = cost;
            }
        }
        return best;
    }

    /** What a box would cover, as a share of its area times the weight of what is there. */
    double share(Rectangle2D box) {
        return cost(box) / (box.getWidth() * box.getHeight());
    }

    boolean isInside(Point2D point) {
        return frame.contains(point);
    }

    /** Of all that lies under a point. */
    double weightAt(double x, double y) {
        double sum = 0;
        for (Taken each : taken) {
            sum += each.contains(x, y) ? each.weight() : 0;
        }
        return sum;
    }

    /** Weighted area that a box would cover. */
    double cost(Rectangle2D box) {
        double sum = frame.contains(box) ? 0 : OUTSIDE;
        for (Taken each : taken) {
            sum += each.covered(box.getX(), box.getY(), box.getMaxX(), box.getMaxY());
        }
        return sum;
    }
}
