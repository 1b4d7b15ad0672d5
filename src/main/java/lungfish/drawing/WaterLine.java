package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import lungfish.quantity.Dimension;

/** Paints the course of water: dashed, with arrow heads the way it goes, and the heights that decide at their places. */
final class WaterLine {
    private static final double WIDE_PX = 2.4;
    private static final double VEIL_PX = 5;
    private static final double DASH_PX = 7;
    private static final double HEAD_EVERY_PX = 74;
    private static final double HEAD_PX = 7;
    private static final double GAP_PX = 14;

    /** Where a tag may stand beside its place, the best first: across and down, -1 to 1. */
    private static final double[][] ABOVE = {
        {0, -1}, {1, -1}, {-1, -1}, {1, 0}, {-1, 0}, {0, 1}, {1, 1}, {-1, 1}, {0, -3}, {0, 3}
    };

    /** On a front the water rises and falls: tags stand to the sides of it. */
    private static final double[][] BESIDE = {{1, 0}, {-1, 0}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {3, 0}, {-3, 0}};

    private final Ink ink;
    private final double[][] sides;
    private final List<Rectangle2D> tags = new ArrayList<>();

    private WaterLine(Ink ink, double[][] sides) {
        this.ink = ink;
        this.sides = sides;
    }

    static WaterLine fromAbove(Ink ink) {
        return new WaterLine(ink, ABOVE);
    }

    static WaterLine onFront(Ink ink) {
        return new WaterLine(ink, BESIDE);
    }

    /** One unbroken piece of the course, in pixels. */
    void course(List<Point2D> points) {
        List<Point2D> line = apart(points);
        if (line.size() < 2) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(line.get(0).getX(), line.get(0).getY());
        line.subList(1, line.size()).forEach(point -> path.lineTo(point.getX(), point.getY()));
        ink.draw(
                path,
                ink.palette().sheet(),
                new BasicStroke((float) ink.px(VEIL_PX), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        ink.draw(path, ink.palette().accent(), ink.dashed(WIDE_PX, DASH_PX));
        heads(line);
    }

    /** Points that lie on one pixel, as those of an airline seen from above, are one. */
    private static List<Point2D> apart(List<Point2D> points) {
        List<Point2D> kept = new ArrayList<>();
        for (Point2D point : points) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).distance(point) > 1) {
                kept.add(point);
            }
        }
        return kept;
    }

    private void heads(List<Point2D> line) {
        double all = 0;
        for (int i = 1; i < line.size(); i++) {
            all += line.get(i - 1).distance(line.get(i));
        }
        int many = Math.max(1, (int) Math.round(all / ink.px(HEAD_EVERY_PX)));
        for (int k = 0; k < many; k++) {
            head(line, all * (k + 0.5) / many);
        }
    }

    private void head(List<Point2D> line, double alongPx) {
        double left = alongPx;
        for (int i = 1; i < line.size(); i++) {
            Point2D from = line.get(i - 1);
            Point2D to = line.get(i);
            double length = from.distance(to);
            if (left <= length) {
                head(from, to, left / length);
                return;
            }
            left -= length;
        }
    }

    private void head(Point2D from, Point2D to, double share) {
        double x = from.getX() + share * (to.getX() - from.getX());
        double y = from.getY() + share * (to.getY() - from.getY());
        double size = ink.px(HEAD_PX);
        Path2D head = new Path2D.Double();
        head.moveTo(size, 0);
        head.lineTo(-size, size * 0.8);
        head.lineTo(-size, -size * 0.8);
        head.closePath();
        AffineTransform there = AffineTransform.getTranslateInstance(x, y);
        there.rotate(to.getX() - from.getX(), to.getY() - from.getY());
        head.transform(there);
        ink.draw(head, ink.palette().sheet(), 2.5);
        ink.fill(head, ink.palette().accent());
    }

    /** A height, with what it is the height of. */
    void tag(String what, double heightM, Point2D at) {
        String text = what + " " + ink.look().quantities().show(heightM, Dimension.LENGTH);
        double wide = ink.width(text, ink.type().drawing()) + ink.px(10);
        double high = ink.height(ink.type().drawing()) + ink.px(4);
        Rectangle2D box = free(at, wide, high);
        tags.add(box);
        ink.fill(box, ink.palette().sheet());
        ink.draw(box, ink.palette().accent(), 1);
        double baseline = box.getCenterY() + ink.letters(ink.type().drawing()) / 2;
        ink.textAround(
                text,
                box.getCenterX(),
                baseline,
                ink.type().drawing(),
                ink.palette().ink());
    }

    private Rectangle2D free(Point2D at, double wide, double high) {
        for (double[] side : sides) {
            Rectangle2D box = Boxes.beside(at, side[0], side[1], ink.px(GAP_PX), wide, high);
            if (tags.stream().noneMatch(box::intersects)) {
                return box;
            }
        }
        return Boxes.beside(at, sides[0][0], sides[0][1], ink.px(GAP_PX), wide, high);
    }

    /** A short piece of it, for the legend. */
    void sign(double x, double y) {
        double half = ink.px(7);
        ink.draw(new Line2D.Double(x - half, y, x + half, y), ink.palette().accent(), ink.dashed(WIDE_PX, 4));
        head(new Point2D.Double(x, y), new Point2D.Double(x + 1, y), 0);
    }
}
