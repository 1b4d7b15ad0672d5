package lungfish.drawing;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import lungfish.quantity.Dimension;

/** The level axis of a picture of an outage: time from the moment at which something fails. */
record OutageTime(double leftPx, double rightPx, double untilS) {
    private static final double HOUR_S = 3600;
    private static final double[] STEPS_H = {0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96, 168};
    private static final double BESIDE_LABEL_PX = 18;

    double x(double s) {
        return leftPx + (rightPx - leftPx) * Math.min(1, Math.max(0, s / untilS));
    }

    double at(double xPx) {
        return untilS * Math.min(1, Math.max(0, (xPx - leftPx) / (rightPx - leftPx)));
    }

    /** Round steps whose labels do not touch. */
    private double stepS(Ink ink) {
        return Arrays.stream(STEPS_H)
                .map(hours -> hours * HOUR_S)
                .filter(step -> step / untilS * (rightPx - leftPx)
                        >= ink.width(label(step, ink), font(ink)) + ink.px(BESIDE_LABEL_PX))
                .findFirst()
                .orElse(untilS);
    }

    private static Font font(Ink ink) {
        return ink.type().drawing();
    }

    private static String label(double s, Ink ink) {
        return s == 0 ? "0" : ink.look().quantities().show(s, Dimension.DURATION);
    }

    /** Thin lines through an area, and labels below it. */
    void paint(Rectangle2D area, Ink ink) {
        double step = stepS(ink);
        double baseline = area.getMaxY() + ink.px(15);
        double taken = Double.NEGATIVE_INFINITY;
        for (double s = 0; s <= untilS * (1 + 1e-9); s += step) {
            double x = x(s);
            ink.line(x, area.getY(), x, area.getMaxY(), ink.palette().floor(), 1);
            ink.line(
                    x,
                    area.getMaxY(),
                    x,
                    area.getMaxY() + ink.px(3),
                    ink.palette().softInk(),
                    1);
            String text = label(s, ink);
            double wide = ink.width(text, font(ink));
            double left = s == 0 ? leftPx : Math.min(rightPx - wide, x - wide / 2);
            if (left > taken + ink.px(6)) { // the last one gives way at the edge
                ink.text(text, left, baseline, font(ink), ink.palette().softInk());
                taken = left + wide;
            }
        }
    }
}
