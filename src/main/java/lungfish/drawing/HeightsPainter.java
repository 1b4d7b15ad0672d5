package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import lungfish.quantity.Dimension;
import lungfish.room.Shelf;

/** Paints the ruler of heights beside a rack's front: even steps on the left, the shelves on the right. */
public final class HeightsPainter {
    private static final double APART_PX = 60;

    private HeightsPainter() {}

    public static void paint(RackScene scene, Viewport view, Look look, Graphics2D g) {
        Ink ink = new Ink(look, view, g);
        Rectangle2D bounds = scene.boundsM();
        steps(bounds, ink);
        for (Shelf shelf : scene.rack().shelves()) {
            shelf(shelf, view.xPx(bounds.getMaxX()) + ink.px(12), ink);
        }
    }

    private static void steps(Rectangle2D bounds, Ink ink) {
        GridSteps steps = GridSteps.apart(ink.px(APART_PX), ink.view(), ink.look());
        double x = ink.view().xPx(0) - ink.px(16);
        ink.line(
                x,
                ink.view().yPx(0),
                x,
                ink.view().yPx(bounds.getY()),
                ink.palette().line(),
                1);
        for (int i = 0; i <= steps.last(-bounds.getY()); i++) {
            double y = ink.view().yPx(-steps.at(i));
            ink.line(x - ink.px(4), y, x, y, ink.palette().softInk(), 1);
            ink.textEnding(
                    steps.label(i),
                    x - ink.px(8),
                    y + ink.px(4),
                    ink.type().drawing(),
                    ink.palette().softInk());
        }
    }

    private static void shelf(Shelf shelf, double x, Ink ink) {
        double y = ink.view().yPx(-shelf.heightM());
        ink.line(x - ink.px(8), y, x, y, ink.palette().softInk(), 1);
        String height = ink.look().quantities().show(shelf.heightM(), Dimension.DEPTH);
        ink.text(
                height,
                x + ink.px(4),
                y + ink.px(4),
                ink.type().drawing(),
                ink.palette().softInk());
    }
}
