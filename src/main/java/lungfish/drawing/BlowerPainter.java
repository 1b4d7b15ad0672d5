package lungfish.drawing;

import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import lungfish.drawing.SceneParts.BlowerPart;
import lungfish.room.Blower;

/** Paints a machine: the planned blower a dark block with its figure, a standby its outline, a pump of today a small box. */
final class BlowerPainter {
    private BlowerPainter() {}

    static void paint(BlowerPart blower, Ink ink) {
        Rectangle2D box = boxPx(blower, ink);
        double corner = ink.px(6);
        RoundRectangle2D block =
                new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), corner, corner);
        switch (blower.blower().role()) {
            case PLANNED -> planned(blower, box, block, ink);
            case STANDBY -> {
                ink.fill(block, ink.palette().sheet());
                ink.draw(block, ink.palette().ink(), ink.dashed(1.4, 3));
            }
            case TODAY -> {
                ink.fill(box, ink.palette().sheet());
                ink.draw(box, ink.palette().softInk(), 1.2);
            }
        }
    }

    private static void planned(BlowerPart blower, Rectangle2D box, RoundRectangle2D block, Ink ink) {
        blower.feedsM()
                .ifPresent(feed -> ink.line(
                        box.getCenterX(),
                        box.getCenterY(),
                        ink.view().xPx(feed[0]),
                        ink.view().yPx(feed[1]),
                        ink.palette().ink(),
                        3));
        ink.fill(block, ink.palette().ink());
        if (ink.isSmall()) {
            return;
        }
        ink.textAround(
                blower.figure(),
                box.getCenterX(),
                box.getCenterY() + ink.px(4),
                ink.type().drawingName(),
                ink.palette().sheet());
    }

    static Rectangle2D boxPx(BlowerPart blower, Ink ink) {
        double x = ink.view().xPx(blower.xM());
        double y = ink.view().yPx(blower.yM());
        double wide =
                switch (blower.blower().role()) {
                    case PLANNED, STANDBY -> ink.mark(36);
                    case TODAY -> ink.mark(8);
                };
        double high = blower.blower().role() == Blower.Role.TODAY ? wide : ink.mark(22);
        return new Rectangle2D.Double(x - wide / 2, y - high / 2, wide, high);
    }
}
