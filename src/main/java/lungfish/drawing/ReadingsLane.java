package lungfish.drawing;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import lungfish.logbook.Point;
import lungfish.quantity.Dimension;

/** One series over time, with its own height: a mark for each reading, and a thin line from one to the next. */
final class ReadingsLane {
    /** The shape of a reading's mark: it tells the series, whatever the colours. */
    enum Mark {
        DOT,
        SQUARE,
        TRIANGLE,
        DIAMOND,
        POINTER
    }

    private static final double STEP_PX = 18;
    private static final int LEAST_STEPS = 2;

    /** Labels closer than this would touch. */
    private static final double LABEL_PX = 13;

    private static final double RADIUS_PX = 3.4;

    /** Above and below what is read there is some room, as a share of it. */
    private static final double ROOM = 0.15;

    /** All that is read lies within this share of its middle: no more is made of it. */
    private static final double LEAST_SPAN = 0.05;

    private final Ink ink;
    private final Rectangle2D plot;
    private final ReadingsTime time;
    private final Dimension dimension;
    private final double low;
    private final double high;

    ReadingsLane(Ink ink, Rectangle2D plot, ReadingsTime time, Dimension dimension, DoubleStream shown) {
        this.ink = ink;
        this.plot = plot;
        this.time = time;
        this.dimension = dimension;
        var values = shown.summaryStatistics();
        double middle = (values.getMin() + values.getMax()) / 2;
        double half = (1 + 2 * ROOM)
                * Math.max((values.getMax() - values.getMin()) / 2, LEAST_SPAN * Math.max(1e-9, Math.abs(middle)));
        this.low = Math.max(0, middle - half);
        this.high = middle + half;
    }

    double y(double si) {
        return plot.getMaxY() - plot.getHeight() * (si - low) / (high - low);
    }

    /** Name over the lane, round steps of its unit at the left. */
    void frame(String name) {
        ink.text(
                name,
                plot.getX(),
                plot.getY() - ink.px(6),
                ink.type().drawingName(),
                ink.palette().ink());
        double step = AxisSteps.upTo(
                        high - low,
                        dimension,
                        (int) Math.max(LEAST_STEPS, plot.getHeight() / ink.px(STEP_PX)),
                        ink.look())
                .stepSi();
        long each = (long) Math.max(1, Math.ceil(ink.px(LABEL_PX) / Math.abs(y(step) - y(0))));
        for (long i = (long) Math.ceil(low / step); i * step <= high; i++) {
            step(i * step, i % each == 0);
        }
        ink.line(
                plot.getX(),
                plot.getMaxY(),
                plot.getMaxX(),
                plot.getMaxY(),
                ink.palette().line(),
                1);
    }

    private void step(double si, boolean isLabelled) {
        ink.line(plot.getX(), y(si), plot.getMaxX(), y(si), ink.palette().line(), 0.7);
        if (isLabelled) {
            ink.textEnding(
                    ink.look().quantities().show(si, dimension),
                    plot.getX() - ink.px(8),
                    y(si) + ink.px(4),
                    ink.type().drawing(),
                    ink.palette().softInk());
        }
    }

    void points(List<Point> points, Mark mark) {
        Path2D path = new Path2D.Double();
        for (Point point : points) {
            double x = time.x(point.on());
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y(point.si()));
            } else {
                path.lineTo(x, y(point.si()));
            }
        }
        if (points.size() > 1) {
            ink.draw(path, ink.palette().softInk(), 0.8);
        }
        points.forEach(point -> mark(point, mark));
    }

    private void mark(Point point, Mark mark) {
        Shape shape = shape(mark, time.x(point.on()), y(point.si()), ink.px(RADIUS_PX));
        ink.fill(shape, mark == Mark.DOT ? ink.palette().air() : ink.palette().sheet());
        ink.draw(shape, mark == Mark.DOT ? ink.palette().air() : ink.palette().ink(), 1.4);
    }

    static Shape shape(Mark mark, double x, double y, double radius) {
        if (mark == Mark.DOT) {
            return StateMark.circle(x, y, radius);
        }
        Path2D path = new Path2D.Double();
        double[][] corners =
                switch (mark) {
                    case SQUARE -> new double[][] {{-0.9, -0.9}, {0.9, -0.9}, {0.9, 0.9}, {-0.9, 0.9}};
                    case TRIANGLE -> new double[][] {{0, -1.2}, {1.1, 0.8}, {-1.1, 0.8}};
                    case POINTER -> new double[][] {{0, 1.2}, {1.1, -0.8}, {-1.1, -0.8}};
                    case DIAMOND, DOT -> new double[][] {{0, -1.3}, {1.3, 0}, {0, 1.3}, {-1.3, 0}};
                };
        path.moveTo(x + corners[0][0] * radius, y + corners[0][1] * radius);
        for (int i = 1; i < corners.length; i++) {
            path.lineTo(x + corners[i][0] * radius, y + corners[i][1] * radius);
        }
        path.closePath();
        return path;
    }
}
