package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.OptionalDouble;

/** Today against planned: two bars from a common zero, so that their lengths are the figures, and a mark where a wish ends. */
final class TwoBars {
    private static final double LABEL_PX = 96;
    private static final double ROW_PX = 24;
    private static final double BAR_PX = 11;

    private final Ink ink;
    private final Rectangle2D area;
    private final double full;
    private final double figurePx;
    private OptionalDouble marked = OptionalDouble.empty();

    /**
     * Two rows at the top of the area.
     *
     * @param full the figure whose bar is as long as there is room
     * @param figurePx room for a figure behind its bar, at 100 %
     */
    TwoBars(Ink ink, Rectangle2D area, double full, double figurePx) {
        this.ink = ink;
        this.area = area;
        this.full = full;
        this.figurePx = figurePx;
    }

    /** Both rows and the words under a mark. */
    static double height(Look look) {
        return look.px(2 * ROW_PX + 16);
    }

    void today(String name, OptionalDouble value, String figure) {
        row(0, name, value, figure);
    }

    void planned(OptionalDouble value, String figure) {
        row(1, "planned", value, figure);
    }

    private void row(int row, String name, OptionalDouble value, String figure) {
        double middle = area.getY() + ink.px(ROW_PX) * (row + 0.5);
        double baseline = middle + ink.px(4);
        String label = ink.fitting(name, ink.px(LABEL_PX - 8), ink.type().drawing());
        ink.text(
                label,
                area.getX(),
                baseline,
                ink.type().drawing(),
                ink.palette().softInk());
        if (value.isEmpty()) {
            ink.text(
                    "not known",
                    x(0),
                    baseline,
                    ink.type().drawing(),
                    ink.palette().softInk());
            return;
        }
        double end = x(value.getAsDouble());
        bar(end, middle, row == 1);
        ground(end + ink.px(1), middle, ink.width(figure, ink.type().drawingName()));
        ink.text(
                figure,
                end + ink.px(6),
                baseline,
                ink.type().drawingName(),
                ink.palette().ink());
    }

    private void bar(double end, double middle, boolean isPlanned) {
        double high = ink.px(BAR_PX);
        RoundRectangle2D bar = new RoundRectangle2D.Double(
                x(0), middle - high / 2, Math.max(1, end - x(0)), high, ink.px(3), ink.px(3));
        if (isPlanned) {
            ink.fill(bar, ink.palette().air());
        } else {
            ink.fill(bar, ink.palette().line());
            ink.draw(bar, ink.palette().softInk(), 0.8);
        }
        marked.ifPresent(value -> notch(x(value), bar));
    }

    /** The mark goes on through a bar that is longer. */
    private void notch(double x, RoundRectangle2D bar) {
        if (x < bar.getMaxX()) {
            ink.line(x, bar.getY(), x, bar.getMaxY(), ink.palette().sheet(), 3);
            ink.line(x, bar.getY(), x, bar.getMaxY(), ink.palette().ink(), 1);
        }
    }

    /** The mark's line stops where a figure stands. */
    private void ground(double left, double middle, double wide) {
        double high = ink.px(16);
        ink.fill(
                new Rectangle2D.Double(left, middle - high / 2, wide + ink.px(8), high),
                ink.palette().sheet());
    }

    private double x(double value) {
        double zero = area.getX() + ink.px(LABEL_PX);
        double room = area.getWidth() - ink.px(LABEL_PX) - ink.px(figurePx);
        return zero + room * Math.max(0, value) / full;
    }

    /** A dashed line through both rows, with words under it; painted before the rows. */
    void mark(double value, String words) {
        marked = OptionalDouble.of(value);
        double x = x(value);
        double bottom = area.getY() + ink.px(2 * ROW_PX);
        ink.draw(
                new Line2D.Double(x, area.getY(), x, bottom),
                ink.palette().ink(),
                new BasicStroke(
                        (float) ink.px(1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {3, 3}, 0));
        double half = ink.width(words, ink.type().drawing()) / 2;
        double middle = Math.max(area.getX() + half, Math.min(area.getMaxX() - half, x));
        ink.textAround(
                words,
                middle,
                bottom + ink.px(12),
                ink.type().drawing(),
                ink.palette().softInk());
    }
}
