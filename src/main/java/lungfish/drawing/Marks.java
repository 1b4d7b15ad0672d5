package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import lungfish.reason.PartId;

/** Frames what is chosen (a strong frame with corners) or under the pointer (a thin one). */
final class Marks {
    private Marks() {}

    static void around(PartId part, Rectangle2D box, Marked marked, Ink ink) {
        if (marked.isChosen(part)) {
            Rectangle2D frame = outset(box, ink.px(3));
            ink.draw(frame, ink.palette().ink(), 1.6);
            corners(frame, ink);
        } else if (marked.isHovered(part)) {
            ink.draw(outset(box, ink.px(2)), ink.palette().ink(), 1);
        }
    }

    private static void corners(Rectangle2D frame, Ink ink) {
        corner(frame.getX(), frame.getY(), ink);
        corner(frame.getMaxX(), frame.getY(), ink);
        corner(frame.getX(), frame.getMaxY(), ink);
        corner(frame.getMaxX(), frame.getMaxY(), ink);
    }

    private static void corner(double x, double y, Ink ink) {
        double half = ink.px(3);
        Rectangle2D square = new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
        ink.fill(square, ink.palette().sheet());
        ink.draw(square, ink.palette().ink(), 1.4);
    }

    static Rectangle2D outset(Rectangle2D box, double by) {
        return new Rectangle2D.Double(
                box.getX() - by, box.getY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
    }
}
