package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/**
 * One painting under way: the look, the view and the graphics, with the few strokes that all painters share. Sizes are
 * pixels at 100 % and grow with the type.
 */
record Ink(Look look, Viewport view, Graphics2D g) {
    private static final double FULL_MARKS_PX_PER_M = 80;
    private static final double LEAST_MARK_SHARE = 0.45;
    private static final double BELOW_BASELINE = 0.27; // of a line's height

    Ink {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    }

    /** For pictures that have no room under them. */
    static Ink flat(Look look, Graphics2D g) {
        return new Ink(look, new Viewport(1, 0, 0), g);
    }

    Palette palette() {
        return look.palette();
    }

    Type type() {
        return look.type();
    }

    double px(double atNormal) {
        return look.px(atNormal);
    }

    /**
     * As {@link #px}, for marks of the room itself (pipe, teeth, machines): where the room is drawn small they shrink with
     * it, down to under a half, so that a hall on a small window is not all pipe.
     */
    double mark(double atNormal) {
        double share = view.pxPerM() / px(FULL_MARKS_PX_PER_M);
        return px(atNormal) * Math.min(1, Math.max(LEAST_MARK_SHARE, share));
    }

    /** Whether marks are drawn too small for words in them. */
    boolean isSmall() {
        return mark(1) < 0.8 * px(1);
    }

    /** Whether any of a box is inside what is painted now. */
    boolean isSeen(Rectangle2D box) {
        return g.hitClip(
                (int) Math.floor(box.getX()),
                (int) Math.floor(box.getY()),
                (int) Math.ceil(box.getWidth()) + 1,
                (int) Math.ceil(box.getHeight()) + 1);
    }

    void draw(Shape shape, Color colour, double widthPx) {
        draw(shape, colour, new BasicStroke((float) px(widthPx), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    }

    void draw(Shape shape, Color colour, Stroke stroke) {
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(shape);
    }

    void line(double x1, double y1, double x2, double y2, Color colour, double widthPx) {
        draw(new Line2D.Double(x1, y1, x2, y2), colour, widthPx);
    }

    Stroke dashed(double widthPx, double dashPx) {
        float dash = (float) px(dashPx);
        return new BasicStroke(
                (float) px(widthPx), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {dash, dash}, 0);
    }

    void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
    }

    /** Water: a tint, or a hatch where ink is all there is. */
    void fillWater(Shape shape) {
        fill(shape, palette().waterFill());
        if (palette().hatched()) {
            hatch(shape, palette().free(), 5);
        }
    }

    /** Thin level lines, as water is hatched on a drawing. */
    private void hatch(Shape shape, Color colour, double everyPx) {
        Shape before = g.getClip();
        g.clip(shape);
        Rectangle2D box = shape.getBounds2D();
        for (double y = box.getY() + px(everyPx) / 2; y < box.getMaxY(); y += px(everyPx)) {
            line(box.getX(), y, box.getMaxX(), y, colour, 0.4);
        }
        g.setClip(before);
    }

    double width(String text, Font font) {
        return font.getStringBounds(text, g.getFontRenderContext()).getWidth();
    }

    /** Height of a line of this font. */
    double height(Font font) {
        return font.getSize2D() * 1.3;
    }

    /** Height of its capitals, above the base line. */
    double letters(Font font) {
        return font.getSize2D() * 0.75;
    }

    /** Text from its left end on a base line. */
    void text(String text, double x, double baseline, Font font, Color colour) {
        g.setFont(font);
        g.setColor(colour);
        g.drawString(text, (float) x, (float) baseline);
    }

    /** Text that ends at x. */
    void textEnding(String text, double x, double baseline, Font font, Color colour) {
        text(text, x - width(text, font), baseline, font, colour);
    }

    /** Text with its middle at x. */
    void textAround(String text, double x, double baseline, Font font, Color colour) {
        text(text, x - width(text, font) / 2, baseline, font, colour);
    }

    /** Text in the box of its width and height. */
    void textIn(String text, Rectangle2D box, Font font, Color colour) {
        text(text, box.getX(), box.getMaxY() - height(font) * BELOW_BASELINE, font, colour);
    }

    /** The text, or as much of it as fits, with a mark for what is missing; empty where nothing of use fits. */
    String fitting(String text, double roomPx, Font font) {
        if (width(text, font) <= roomPx) {
            return text;
        }
        for (int end = text.length() - 1; end > 1; end--) {
            String cut = text.substring(0, end).stripTrailing() + "…";
            if (width(cut, font) <= roomPx) {
                return cut;
            }
        }
        return "";
    }
}
