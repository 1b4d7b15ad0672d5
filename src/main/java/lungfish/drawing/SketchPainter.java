package lungfish.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import lungfish.quantity.Dimension;

/** Paints what a hand is doing, over a finished drawing. */
public final class SketchPainter {
    /** A length shorter than its own figure is not worth saying. */
    private static final double LEAST_LENGTH_PX = 26;

    private static final double SPOT_PX = 9;

    /** Words that explain a line stand clear of a figure that is measured along it. */
    private static final double ABOVE_PX = 17;

    private final Ink ink;
    private final Rectangle2D area;

    private SketchPainter(Ink ink, Rectangle2D area) {
        this.ink = ink;
        this.area = area;
    }

    /**
     * Paints it.
     *
     * @param area of the drawing, pixels: notes stay inside of it
     */
    public static void paint(Sketch sketch, Rectangle2D area, Viewport viewport, Look look, Graphics2D g) {
        SketchPainter painter = new SketchPainter(new Ink(look, viewport, g), area);
        sketch.strokes().forEach(painter::stroke);
        sketch.note().ifPresent(painter::note);
    }

    private void stroke(Sketch.Stroke stroke) {
        if (stroke instanceof Sketch.Ghost ghost) {
            ink.draw(ink.view().px(ghost.box()), ink.palette().ink(), ink.dashed(1.4, 5));
        } else if (stroke instanceof Sketch.Choosing choosing) {
            choosing(ink.view().px(choosing.box()));
        } else if (stroke instanceof Sketch.Path path) {
            path(path.corners());
        } else if (stroke instanceof Sketch.Length length) {
            length(px(length.fromXM(), length.fromYM()), px(length.toXM(), length.toYM()));
        } else if (stroke instanceof Sketch.Rest rest) {
            rest(rest);
        } else if (stroke instanceof Sketch.Spot spot) {
            spot(px(spot.xM(), spot.yM()));
        } else {
            HoldPainter.paint(stroke, ink);
        }
    }

    private Point2D px(double xM, double yM) {
        return ink.view().px(xM, yM);
    }

    private void choosing(Rectangle2D box) {
        Color air = ink.palette().air();
        ink.fill(box, new Color(air.getRed(), air.getGreen(), air.getBlue(), 24));
        ink.draw(box, air, 1);
    }

    private void path(List<Point2D> corners) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners.size(); i++) {
            Point2D at = px(corners.get(i).getX(), corners.get(i).getY());
            if (i == 0) {
                path.moveTo(at.getX(), at.getY());
            } else {
                path.lineTo(at.getX(), at.getY());
            }
        }
        BasicStroke round = new BasicStroke((float) ink.px(2.4), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        ink.draw(path, ink.palette().air(), round);
        corners.forEach(corner -> HoldPainter.paint(new Sketch.Handle(corner.getX(), corner.getY()), ink));
    }

    private void spot(Point2D at) {
        double half = ink.px(SPOT_PX);
        ink.draw(
                new Ellipse2D.Double(at.getX() - half, at.getY() - half, 2 * half, 2 * half),
                ink.palette().ink(),
                ink.dashed(1.4, 3));
    }

    /** A line with a bar at either end, and its figure on the sheet's ground in the middle. */
    private void length(Point2D from, Point2D to) {
        double px = from.distance(to);
        if (px < ink.px(LEAST_LENGTH_PX)) {
            return;
        }
        double barX = ink.px(4) * (to.getY() - from.getY()) / px;
        double barY = ink.px(4) * (to.getX() - from.getX()) / px;
        Color soft = ink.palette().softInk();
        ink.line(from.getX(), from.getY(), to.getX(), to.getY(), soft, 1);
        for (Point2D end : List.of(from, to)) {
            ink.line(end.getX() - barX, end.getY() + barY, end.getX() + barX, end.getY() - barY, soft, 1);
        }
        String figure = ink.look().quantities().show(px / ink.view().pxPerM(), Dimension.LENGTH);
        label(figure, (from.getX() + to.getX()) / 2, (from.getY() + to.getY()) / 2, soft);
    }

    private void rest(Sketch.Rest rest) {
        Point2D from = px(rest.fromXM(), rest.fromYM());
        Point2D to = px(rest.toXM(), rest.toYM());
        Color accent = ink.palette().accent();
        ink.draw(new java.awt.geom.Line2D.Double(from, to), accent, ink.dashed(1, 3));
        label(rest.words(), (from.getX() + to.getX()) / 2, Math.min(from.getY(), to.getY()) - ink.px(ABOVE_PX), accent);
    }

    private void label(String words, double x, double middleY, Color colour) {
        Font font = ink.type().drawing();
        double width = ink.width(words, font) + ink.px(6);
        double height = ink.height(font);
        ink.fill(
                new Rectangle2D.Double(x - width / 2, middleY - height / 2, width, height),
                ink.palette().sheet());
        ink.textAround(words, x, middleY + ink.letters(font) / 2, font, colour);
    }

    /** Right below the hand, or wherever beside it there is room inside the drawing. */
    private void note(Sketch.Note note) {
        Font font = ink.type().label();
        Point2D hand = px(note.xM(), note.yM());
        String words = ink.fitting(note.words(), area.getWidth() - ink.px(32), font);
        double width = ink.width(words, font) + ink.px(16);
        double height = ink.height(font) + ink.px(8);
        double x = Math.max(area.getX(), Math.min(hand.getX() + ink.px(14), area.getMaxX() - width));
        double below = hand.getY() + ink.px(16);
        double y = below + height > area.getMaxY() ? hand.getY() - ink.px(10) - height : below;
        double round = ink.px(8);
        RoundRectangle2D sheet = new RoundRectangle2D.Double(x, y, width, height, round, round);
        Color colour = note.refused() ? ink.palette().accent() : ink.palette().ink();
        ink.fill(sheet, ink.palette().sheet());
        ink.draw(sheet, colour, 1);
        ink.text(words, x + ink.px(8), y + ink.px(4) + ink.letters(font) * 1.15, font, colour);
    }
}
