package lungfish.drawing;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Paints the rulers above and left of a room, in the reader's units; they stay in sight however far one zooms in. */
public final class RulerPainter {
    /** From the room to the ruler, and to the far side of its figures. */
    static final double GAP_PX = 16;

    static final double BAND_PX = 36;
    private static final double APART_PX = 88;
    private static final double TICK_PX = 4;

    private RulerPainter() {}

    /** Paints along the upper and left edges of the room, or of the area where the room goes beyond it. */
    public static void paint(RoomScene scene, Rectangle2D area, Viewport view, Look look, Graphics2D g) {
        Ink ink = new Ink(look, view, g);
        GridSteps steps = GridSteps.apart(ink.px(APART_PX), view, look);
        double left =
                Math.max(area.getX() + ink.px(20), view.xPx(scene.boundsM().getX()) - ink.px(GAP_PX));
        across(steps, scene.room().shell().lengthM(), topPx(scene, area, ink), ink, area);
        down(steps, scene.room().shell().widthM(), left, ink, area);
    }

    private static double topPx(RoomScene scene, Rectangle2D area, Ink ink) {
        double above = ink.view().yPx(scene.boundsM().getY()) - ink.px(GAP_PX);
        return Math.max(area.getY() + ink.px(20), above);
    }

    /** Where the figures above the room stand: names keep off them, and may stand between them. */
    static List<Rectangle2D> figuresPx(RoomScene scene, Rectangle2D area, Ink ink) {
        GridSteps steps = GridSteps.apart(ink.px(APART_PX), ink.view(), ink.look());
        double top = topPx(scene, area, ink);
        List<Rectangle2D> figures = new ArrayList<>();
        for (int i = 0; i <= steps.last(scene.room().shell().lengthM()); i++) {
            double x = ink.view().xPx(steps.at(i));
            double half = ink.width(steps.label(i), ink.type().drawing()) / 2;
            figures.add(Boxes.between(x - half, top - ink.px(16), x + half, top, ink.px(2)));
        }
        return figures;
    }

    private static void across(GridSteps steps, double toM, double top, Ink ink, Rectangle2D area) {
        Font font = ink.type().drawing();
        for (int i = 0; i <= steps.last(toM); i++) {
            double x = ink.view().xPx(steps.at(i));
            if (x >= area.getX() && x <= area.getMaxX()) {
                ink.line(x, top - ink.px(TICK_PX), x, top, ink.palette().softInk(), 1);
                ink.textAround(
                        steps.label(i), x, top - ink.px(7), font, ink.palette().softInk());
            }
        }
    }

    /** Read from below, so that a narrow margin is enough. */
    private static void down(GridSteps steps, double toM, double left, Ink ink, Rectangle2D area) {
        for (int i = 1; i <= steps.last(toM); i++) {
            double y = ink.view().yPx(steps.at(i));
            if (y >= area.getY() && y <= area.getMaxY()) {
                ink.line(left - ink.px(TICK_PX), y, left, y, ink.palette().softInk(), 1);
                Graphics2D turned = (Graphics2D) ink.g().create();
                turned.rotate(-Math.PI / 2, left - ink.px(7), y);
                new Ink(ink.look(), ink.view(), turned)
                        .textAround(
                                steps.label(i),
                                left - ink.px(7),
                                y,
                                ink.type().drawing(),
                                ink.palette().softInk());
                turned.dispose();
            }
        }
    }
}
