package lungfish.drawing;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Boxes that labels ask for: around a point, along a line, beside a mark. */
final class Boxes {
    private Boxes() {}

    /** The box that two corners span, larger by so much on every side. */
    static Rectangle2D between(double x1, double y1, double x2, double y2, double by) {
        Rectangle2D.Double box = new Rectangle2D.Double(x1, y1, 0, 0);
        box.add(x2, y2);
        return Marks.outset(box, by);
    }

    static Rectangle2D around(double x, double y, double by) {
        return new Rectangle2D.Double(x - by, y - by, 2 * by, 2 * by);
    }

    static Rectangle2D around(Point2D at, double by) {
        return around(at.getX(), at.getY(), by);
    }

    /** A box of this size that stands a gap away from a point, towards there: -1 to 1 across and down. */
    static Rectangle2D beside(Point2D at, double across, double down, double gap, double wide, double high) {
        double x = at.getX() + across * gap + (across - 1) * wide / 2;
        double y = at.getY() + down * gap + (down - 1) * high / 2;
        return new Rectangle2D.Double(x, y, wide, high);
    }
}
