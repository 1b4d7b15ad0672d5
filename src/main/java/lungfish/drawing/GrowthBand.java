package lungfish.drawing;

import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lungfish.room.Run;

/** Paints room to grow as a band along the pipe, under it: the wider, the more outlets fit there; narrow where it does not matter. */
final class GrowthBand {
    /** Beyond the pipe, to either side; all of a pipe along which the place does not matter is so narrow. */
    private static final double LEAST_PX = 3;

    private static final double MOST_PX = 13;

    /** Of 255: the tanks under it shine through. */
    private static final int TINT = 52;

    private static final int EDGE = 190;
    private static final double SOFT = 0.45;
    private static final double SHARPEST = 1.6;

    private final GrowthLaid growing;
    private final Ink ink;

    /** A point of the band's middle, in pixels, and half its width there. */
    private record Half(double x, double y, double px) {}

    private GrowthBand(GrowthLaid growing, Ink ink) {
        this.growing = growing;
        this.ink = ink;
    }

    static void paint(RoomScene scene, Ink ink) {
        scene.growing().filter(each -> each.map().most() > 0).ifPresent(growing -> {
            GrowthBand band = new GrowthBand(growing, ink);
            scene.room().runs().forEach(band::run);
        });
    }

    private void run(Run run) {
        for (List<GrowthProfile.Mark> piece : new GrowthProfile(growing.map(), run).pieces()) {
            List<Half> halves = halves(piece);
            if (halves.size() > 1) {
                paint(halves);
            }
        }
    }

    /** Points that lie on one pixel, as along a riser, are one. */
    private List<Half> halves(List<GrowthProfile.Mark> piece) {
        List<Half> halves = new ArrayList<>();
        for (GrowthProfile.Mark mark : piece) {
            double x = ink.view().xPx(mark.at().xM());
            double y = ink.view().yPx(mark.at().yM());
            boolean isNew = halves.isEmpty()
                    || Point2D.distance(
                                    x,
                                    y,
                                    halves.get(halves.size() - 1).x(),
                                    halves.get(halves.size() - 1).y())
                            > 0.5;
            if (isNew) {
                halves.add(new Half(x, y, halfPx(mark.outlets())));
            }
        }
        return halves;
    }

    private double halfPx(double outlets) {
        double share = growing.map().placeMatters() ? outlets / growing.map().most() : 0;
        double beyond = outlets > 0 ? LEAST_PX + share * (MOST_PX - LEAST_PX) : 0;
        return ink.mark(PipePainter.BORE_PX / 2 + PipePainter.WALL_PX + beyond);
    }

    private void paint(List<Half> halves) {
        Half first = halves.get(0);
        Half last = halves.get(halves.size() - 1);
        boolean isRing = halves.size() > 3 && Point2D.distance(first.x(), first.y(), last.x(), last.y()) < 0.5;
        Path2D left = side(halves, 1, isRing);
        Path2D right = side(halves, -1, isRing);
        Path2D fill = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        fill.append(left, false);
        if (isRing) {
            left.closePath();
            right.closePath();
            fill.closePath();
            fill.append(right, false);
        } else {
            fill.append(side(reversed(halves), 1, false), true);
            fill.closePath();
        }
        double strength = growing.isCurrent() ? 1 : SOFT;
        ink.fill(fill, tinted(TINT * strength, ink));
        ink.draw(left, tinted(EDGE * strength, ink), 1);
        ink.draw(right, tinted(EDGE * strength, ink), 1);
    }

    /** What the band is filled with. */
    static Color tint(Ink ink) {
        return tinted(TINT, ink);
    }

    private static Color tinted(double alpha, Ink ink) {
        Color planned = ink.palette().planned();
        return new Color(planned.getRed(), planned.getGreen(), planned.getBlue(), (int) alpha);
    }

    private static List<Half> reversed(List<Half> halves) {
        List<Half> back = new ArrayList<>(halves);
        Collections.reverse(back);
        return back;
    }

    /** One edge of the band: each point pushed aside along the middle between the two normals there. */
    private static Path2D side(List<Half> halves, int way, boolean isRing) {
        Path2D path = new Path2D.Double();
        int last = halves.size() - 1;
        for (int i = 0; i <= last; i++) {
            Half before = halves.get(i > 0 ? i - 1 : isRing ? last - 1 : i);
            Half after = halves.get(i < last ? i + 1 : isRing ? 1 : i);
            Point2D aside = aside(before, halves.get(i), after);
            double x = halves.get(i).x() + way * halves.get(i).px() * aside.getX();
            double y = halves.get(i).y() + way * halves.get(i).px() * aside.getY();
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        return path;
    }

    private static Point2D aside(Half before, Half at, Half after) {
        Point2D in = normal(before, at);
        Point2D out = normal(at, after);
        if (before.equals(at) || at.equals(after)) {
            return before.equals(at) ? out : in; // an end
        }
        double x = in.getX() + out.getX();
        double y = in.getY() + out.getY();
        double square = (x * x + y * y) / 2; // of two equal normals: 2; of two at right angles: 1
        double by = square > 0.1 ? Math.min(SHARPEST, 1 / square) : 0;
        return new Point2D.Double(x * by, y * by);
    }

    private static Point2D normal(Half from, Half to) {
        double length = Point2D.distance(from.x(), from.y(), to.x(), to.y());
        return length > 0
                ? new Point2D.Double((from.y() - to.y()) / length, (to.x() - from.x()) / length)
                : new Point2D.Double(0, 0);
    }
}
