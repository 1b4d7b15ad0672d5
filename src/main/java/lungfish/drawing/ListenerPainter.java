package lungfish.drawing;

import java.awt.geom.Arc2D;
import lungfish.room.Listener;

/** Paints where the keeper sits and hears: a head, and the sound that reaches it. */
final class ListenerPainter {
    static final double HEAD_PX = 5.5;

    private ListenerPainter() {}

    static void paint(Listener listener, Ink ink) {
        double x = ink.view().xPx(listener.place().xM());
        double y = ink.view().yPx(listener.place().yM());
        ink.fill(StateMark.circle(x, y, ink.px(HEAD_PX)), ink.palette().sheet());
        ink.draw(StateMark.circle(x, y, ink.px(HEAD_PX)), ink.palette().ink(), 1.4);
        for (double radius = 10; radius <= 14; radius += 4) {
            double r = ink.px(radius);
            ink.draw(
                    new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, -38, 76, Arc2D.OPEN),
                    ink.palette().ink(),
                    1.2);
        }
    }
}
