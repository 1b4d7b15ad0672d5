package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.function.ToIntFunction;
import lungfish.rescue.Kept;
import lungfish.rescue.Outcome;

/** How many tanks are safe in each hazard: two bars of one length for all, each with its figure, and a tick where none is lost. */
public final class SafePicture {
    private static final double ROW_PX = 20;
    private static final double LABEL_PX = 98;
    private static final double FIGURE_PX = 92;
    private static final double BAR_PX = 9;

    private final Ink ink;
    private final Rectangle2D area;
    private final int judged;

    private SafePicture(Ink ink, Rectangle2D area, int judged) {
        this.ink = ink;
        this.area = area;
        this.judged = judged;
    }

    public static double height(Look look) {
        return look.px(2 * ROW_PX);
    }

    /**
     * Paints both from the top of the area.
     *
     * @param judged how many tanks could be safe
     */
    public static void paint(Outcome outcome, int judged, Rectangle2D area, Look look, Graphics2D g) {
        new SafePicture(Ink.flat(look, g), area, judged).rows(outcome, Kept::safe);
    }

    /**
     * The same of the essential tanks alone.
     *
     * @param judged how many of them could be safe
     */
    public static void paintEssential(Outcome outcome, int judged, Rectangle2D area, Look look, Graphics2D g) {
        new SafePicture(Ink.flat(look, g), area, judged).rows(outcome, Kept::essentialSafe);
    }

    private void rows(Outcome outcome, ToIntFunction<Kept> safe) {
        row(0, "mains away", safe.applyAsInt(outcome.mains()));
        row(1, "blower stops", safe.applyAsInt(outcome.blower()));
    }

    private void row(int row, String name, int safe) {
        double middle = area.getY() + ink.px(ROW_PX) * (row + 0.5);
        double baseline = middle + ink.px(4);
        ink.text(
                name, area.getX(), baseline, ink.type().drawing(), ink.palette().softInk());
        double left = area.getX() + ink.px(LABEL_PX);
        double wide = Math.max(ink.px(20), area.getWidth() - ink.px(LABEL_PX) - ink.px(FIGURE_PX));
        RoundRectangle2D all = bar(left, middle, wide);
        ink.fill(all, ink.palette().floor());
        if (safe > 0 && judged > 0) {
            ink.fill(
                    bar(left, middle, Math.max(ink.px(3), wide * safe / judged)),
                    ink.palette().air());
        }
        ink.draw(all, ink.palette().softInk(), 0.8);
        boolean isWhole = safe == judged;
        double at = left + wide + ink.px(8);
        mark(isWhole, at, middle);
        ink.text(
                safe + " of " + judged,
                at + ink.px(16),
                baseline,
                ink.type().drawing(),
                isWhole ? ink.palette().ink() : ink.palette().softInk());
    }

    private RoundRectangle2D bar(double left, double middle, double wide) {
        double high = ink.px(BAR_PX);
        return new RoundRectangle2D.Double(left, middle - high / 2, wide, high, ink.px(3), ink.px(3));
    }

    /** A tick, or a cross: the shape tells it, not the colour. */
    private void mark(boolean isWhole, double left, double middle) {
        double size = ink.px(4);
        Path2D path = new Path2D.Double();
        if (isWhole) {
            path.moveTo(left, middle);
            path.lineTo(left + size * 0.8, middle + size * 0.9);
            path.lineTo(left + size * 2.4, middle - size);
        } else {
            path.moveTo(left, middle - size);
            path.lineTo(left + 2 * size, middle + size);
            path.moveTo(left, middle + size);
            path.lineTo(left + 2 * size, middle - size);
        }
        ink.draw(path, isWhole ? ink.palette().good() : ink.palette().accent(), 1.8);
    }
}
