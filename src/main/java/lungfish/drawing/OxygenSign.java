package lungfish.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * How a tank stands, as a sign over all of it: nothing where it is fine, a hatch in alarm, crossed out in danger, a question mark
 * where nobody can judge. The shape tells it, the colour only helps.
 */
public final class OxygenSign {
    private static final double HATCH_PX = 5;
    private static final double SAMPLE_SHARE = 0.7;

    private final Ink ink;
    private final Color accent;

    OxygenSign(Ink ink, Color accent) {
        this.ink = ink;
        this.accent = accent;
    }

    /** A small tank in a state, for legends and lists. */
    public static void sample(OxygenState state, Rectangle2D box, Look look, Graphics2D g) {
        sample(state, box, Ink.flat(look, g));
    }

    static void sample(OxygenState state, Rectangle2D box, Ink ink) {
        if (state == OxygenState.FINE) {
            double high = SAMPLE_SHARE * box.getHeight();
            ink.fillWater(new Rectangle2D.Double(box.getX(), box.getMaxY() - high, box.getWidth(), high));
        }
        new OxygenSign(ink, ink.palette().accent()).paint(state, box);
        ink.draw(box, ink.palette().waterEdge(), 0.9);
    }

    void paint(OxygenState state, Rectangle2D box) {
        switch (state) {
            case FINE -> {}
            case ALARM -> hatch(box);
            case DANGER -> {
                ink.fill(box, ink.palette().accentSoft());
                cross(box);
            }
            case UNKNOWN -> unknown(box);
        }
    }

    private void hatch(Rectangle2D box) {
        Path2D lines = new Path2D.Double();
        double high = box.getHeight();
        for (double x = box.getX() - high; x < box.getMaxX(); x += ink.px(HATCH_PX)) {
            lines.moveTo(x, box.getMaxY());
            lines.lineTo(x + high, box.getY());
        }
        Shape before = ink.g().getClip();
        ink.g().clip(box);
        ink.draw(lines, accent, 1);
        ink.g().setClip(before);
    }

    private void cross(Rectangle2D box) {
        Path2D cross = new Path2D.Double();
        cross.moveTo(box.getX(), box.getY());
        cross.lineTo(box.getMaxX(), box.getMaxY());
        cross.moveTo(box.getX(), box.getMaxY());
        cross.lineTo(box.getMaxX(), box.getY());
        cross.append(box, false);
        ink.draw(cross, accent, 1.6);
    }

    private void unknown(Rectangle2D box) {
        Font font = ink.type().drawing();
        if (box.getHeight() >= ink.letters(font) && box.getWidth() >= ink.px(8)) {
            double baseline = box.getCenterY() + ink.letters(font) / 2;
            ink.textAround("?", box.getCenterX(), baseline, font, ink.palette().softInk());
        }
    }
}
