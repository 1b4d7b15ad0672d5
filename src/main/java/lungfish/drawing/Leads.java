package lungfish.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RectangularShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the way from a mark to free ground for its words: a short bent line, as on a drawing. A candidate is judged by its
 * length, by what its words would cover, and by what its line would cross; all three count as pixels of detour.
 */
final class Leads {
    private static final double NEAREST_PX = 20;
    private static final double FARTHEST_PX = 240;
    private static final double STEP_PX = 10;
    private static final int STEP_DEGREES = 15;
    private static final double SHELF_PX = 10;
    private static final double GAP_PX = 4;

    /** Words that cover ground of weight 1 with all their area are worth so long a detour. */
    private static final double COVERED_PX = 220;

    /** A line that crosses ground of weight 1 is worth so many times its length. */
    private static final double CROSSED = 0.8;

    private static final double SAMPLE_PX = 4;

    /** Of a direction's cosine and sine: straight up or down, and steep enough for words at its end. */
    private static final double UPRIGHT = 0.01;

    private static final double STEEP = 0.6;

    /** How much of the words stands left of the end of a steep line. */
    private static final double[] SHARES = {0.5, 0.3, 0.7, 0.1, 0.9};

    private final Ink ink;
    private final LabelSpots spots;

    Leads(Ink ink, LabelSpots spots) {
        this.ink = ink;
        this.spots = spots;
    }

    /** Where the line bends, where it ends, the words at its end, and what it costs. */
    record Lead(Point2D bend, Point2D end, Rectangle2D words, double cost) {
        /** The line, from the edge of the mark. */
        Path2D from(RectangularShape mark) {
            Point2D start = edge(mark);
            Path2D line = new Path2D.Double();
            line.moveTo(start.getX(), start.getY());
            line.lineTo(bend.getX(), bend.getY());
            line.lineTo(end.getX(), end.getY());
            return line;
        }

        private Point2D edge(RectangularShape mark) {
            double dx = bend.getX() - mark.getCenterX();
            double dy = bend.getY() - mark.getCenterY();
            double length = Math.hypot(dx, dy);
            double at = 0;
            while (at < length
                    && mark.contains(mark.getCenterX() + at * dx / length, mark.getCenterY() + at * dy / length)) {
                at += 0.5;
            }
            return new Point2D.Double(mark.getCenterX() + at * dx / length, mark.getCenterY() + at * dy / length);
        }
    }

    /** The cheapest way to words of this size. */
    Lead best(RectangularShape mark, Rectangle2D size) {
        return best(mark, size, Double.POSITIVE_INFINITY);
    }

    /** The cheapest way that costs no more than so much; of a room full of machines many have none, and none is sought in vain. */
    Optional<Lead> within(double most, RectangularShape mark, Rectangle2D size) {
        double bound = Math.nextUp(most);
        return Optional.of(best(mark, size, bound)).filter(lead -> lead.cost() < bound);
    }

    private Lead best(RectangularShape mark, Rectangle2D size, double bound) {
        double wide = size.getWidth();
        double high = size.getHeight();
        Lead first = leads(mark, NEAREST_PX, 90, wide, high).get(0);
        Lead best = new Lead(first.bend(), first.end(), first.words(), bound);
        for (double reach = NEAREST_PX; reach <= FARTHEST_PX && ink.px(reach) < best.cost(); reach += STEP_PX) {
            for (int degrees = 0; degrees < 360; degrees += STEP_DEGREES) {
                for (Lead lead : leads(mark, reach, degrees, wide, high)) {
                    best = better(best, lead, mark);
                }
            }
        }
        return best;
    }

    private Lead better(Lead best, Lead other, RectangularShape mark) {
        double outside = COVERED_PX / (other.words().getWidth() * other.words().getHeight());
        double cost = other.cost() + outside * spots.cost(Marks.outset(other.words(), ink.px(3)));
        if (cost >= best.cost()) {
            return best; // what it crosses need not be known
        }
        double all = cost + crossed(mark, other, best.cost() - cost);
        return all < best.cost() ? new Lead(other.bend(), other.end(), other.words(), all) : best;
    }

    /** What the line crosses, or something that is more than matters. */
    private double crossed(RectangularShape mark, Lead lead, double matters) {
        double dx = lead.bend().getX() - mark.getCenterX();
        double dy = lead.bend().getY() - mark.getCenterY();
        double length = Math.hypot(dx, dy);
        double sum = 0;
        double most = matters / (CROSSED * SAMPLE_PX);
        for (double at = mark.getWidth() / 2; at < length && sum <= most; at += SAMPLE_PX) {
            sum += spots.weightAt(mark.getCenterX() + at * dx / length, mark.getCenterY() + at * dy / length);
        }
        return CROSSED * SAMPLE_PX * sum;
    }

    /** Words at the end of a shelf that leads on, and over or under the end of a steep line. Their cost so far is length. */
    private List<Lead> leads(RectangularShape mark, double reachPx, int degrees, double wide, double high) {
        double across = Math.cos(Math.toRadians(degrees));
        double down = Math.sin(Math.toRadians(degrees));
        double reach = mark.getWidth() / 2 + ink.px(reachPx);
        Point2D bend = new Point2D.Double(mark.getCenterX() + reach * across, mark.getCenterY() + reach * down);
        List<Lead> leads = new ArrayList<>();
        for (int way = across < -UPRIGHT ? -1 : 1; way >= (across > UPRIGHT ? 1 : -1); way -= 2) {
            leads.add(onShelf(bend, way, reach, wide, high));
        }
        if (Math.abs(down) >= STEEP) {
            for (double share : SHARES) {
                double top = down > 0 ? bend.getY() + ink.px(2) : bend.getY() - ink.px(2) - high;
                Rectangle2D words = new Rectangle2D.Double(bend.getX() - share * wide, top, wide, high);
                leads.add(new Lead(bend, bend, words, reach));
            }
        }
        return leads;
    }

    private Lead onShelf(Point2D bend, int way, double reach, double wide, double high) {
        Point2D end = new Point2D.Double(bend.getX() + way * ink.px(SHELF_PX), bend.getY());
        double near = end.getX() + way * ink.px(GAP_PX);
        double left = way > 0 ? near : near - wide;
        return new Lead(bend, end, new Rectangle2D.Double(left, bend.getY() - high / 2, wide, high), reach);
    }

    /** A lead as a label; its words and its line count as taken from now on. */
    Label label(Lead lead, RectangularShape mark, Label words) {
        Path2D line = lead.from(mark);
        spots.take(Marks.outset(lead.words(), ink.px(1.5)), 10);
        spots.takeAlong(line, ink.px(2), 4);
        return new Label(words.text(), lead.words(), words.font(), words.colour(), Optional.of(line));
    }
}
